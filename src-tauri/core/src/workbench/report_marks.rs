//! Marks of photos as they are printed.

use crate::photo::Mark;
use crate::report::Stroke;

/// How long the barbs of an arrow are beside the arrow, and at most beside the picture.
const BARB: (f64, f64) = (0.3, 0.05);
/// How far a barb stands off the shaft, radians.
const OFF: f64 = 0.5;

/// The marks of a photo; pins are numbered in their order.
pub(super) fn strokes(marks: &[Mark]) -> Vec<Stroke> {
    let mut pins = 0;
    let mut strokes = Vec::new();
    for mark in marks {
        match mark {
            Mark::Pin { x, y, .. } => {
                pins += 1;
                strokes.push(Stroke::Pin(at(*x, *y), pins.to_string()));
            }
            Mark::Arrow { x1, y1, x2, y2, .. } => {
                strokes.push(Stroke::Line(vec![at(*x1, *y1), at(*x2, *y2)]));
                strokes.push(Stroke::Line(head([*x1, *y1], [*x2, *y2])));
            }
            Mark::Box { x1, y1, x2, y2, .. } => {
                let corners = [(x1, y1), (x2, y1), (x2, y2), (x1, y2), (x1, y1)];
                strokes.push(Stroke::Line(corners.map(|(x, y)| at(*x, *y)).to_vec()));
            }
        }
    }
    strokes
}

fn at(x: f64, y: f64) -> [f32; 2] {
    [x as f32, y as f32]
}

/// One barb, the head and the other barb.
fn head([x1, y1]: [f64; 2], [x2, y2]: [f64; 2]) -> Vec<[f32; 2]> {
    let (dx, dy) = (x1 - x2, y1 - y2);
    let length = dx.hypot(dy);
    let long = (length * BARB.0).min(BARB.1);
    let angle = dy.atan2(dx);
    let barb = |off: f64| at(x2 + long * (angle + off).cos(), y2 + long * (angle + off).sin());
    vec![barb(OFF), at(x2, y2), barb(-OFF)]
}
