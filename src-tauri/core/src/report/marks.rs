//! What somebody drew on a photo: white under black, so that it is seen on any picture.

use super::letters::Weight;
use super::page::{Area, BLACK, Mark};
use super::pen::Pen;
use super::sheet::{Photo, Stroke};

const WHITE: f32 = 1.0;
const LINE: f32 = 1.8;
const AROUND: f32 = 4.0;
const PIN: f32 = 7.0;
const NUMBER: f32 = 9.0;

/// Draws the marks of a photo over it.
pub(super) fn draw(pen: &mut Pen<'_>, part: usize, photo: &Photo, area: Area) {
    let at = |[x, y]: [f32; 2]| [area.x + x * area.width, area.y + y * area.height];
    for mark in &photo.marks {
        match mark {
            Stroke::Line(points) => {
                let points: Vec<[f32; 2]> = points.iter().map(|point| at(*point)).collect();
                for (line, ink) in [(AROUND, WHITE), (LINE, BLACK)] {
                    let points = points.clone();
                    pen.put(Some(part), Mark::Shape { points, closed: false, line, ink });
                }
            }
            Stroke::Pin(middle, number) => {
                let middle = at(*middle);
                let disc = |radius: f32, ink: f32| Mark::Disc { middle, radius, line: 0.0, ink };
                pen.put(Some(part), disc(PIN + 1.5, WHITE));
                pen.put(Some(part), disc(PIN, BLACK));
                let wide = pen.letters.width(number, Weight::Bold, NUMBER);
                let [x, y] = middle;
                let (size, weight, ink) = (NUMBER, Weight::Bold, WHITE);
                let (x, baseline) = (x - wide / 2.0, y + NUMBER * 0.36);
                let text = number.clone();
                pen.put(Some(part), Mark::Text { x, baseline, size, weight, ink, text });
            }
        }
    }
}
