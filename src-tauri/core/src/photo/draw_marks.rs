//! Draws the marks of a photo into it, to be given away: ink in a white casing, so that it reads on any photo.

use image::RgbImage;
use tiny_skia::{
    Color, FillRule, LineCap, LineJoin, Paint, Path, PathBuilder, Pixmap, Stroke, Transform,
};

use super::marks::Mark;

/// Width of the ink, as a share of the picture's longer side. Ours: about 8 px of 2048.
const INK: f32 = 0.004;
/// Width of ink and casing together, as a multiple of the ink.
const CASED: f32 = 2.2;
/// Radius of a pin's disc, as a multiple of the ink.
const PIN: f32 = 5.5;
/// Length of an arrow's head, as a multiple of the ink.
const HEAD: f32 = 7.0;
/// Height of a digit, as a multiple of the ink.
const DIGIT: f32 = 5.0;

/// Draws marks into a picture, in their order; pins are numbered from 1.
pub fn draw_on(picture: &mut RgbImage, marks: &[Mark]) {
    let Some(mut sheet) = sheet_of(picture) else { return };
    let pen = Pen::for_picture(picture);
    let mut pins = 0;
    for mark in marks {
        match mark {
            Mark::Pin { x, y, .. } => {
                pins += 1;
                pen.pin(&mut sheet, pen.place(*x, *y), pins);
            }
            Mark::Arrow { x1, y1, x2, y2, .. } => {
                pen.line(
                    &mut sheet,
                    arrow(pen.place(*x1, *y1), pen.place(*x2, *y2), pen.ink * HEAD),
                );
            }
            Mark::Box { x1, y1, x2, y2, .. } => {
                pen.line(&mut sheet, frame(pen.place(*x1, *y1), pen.place(*x2, *y2)));
            }
        }
    }
    for (pixel, drawn) in picture.pixels_mut().zip(sheet.pixels()) {
        pixel.0 = [drawn.red(), drawn.green(), drawn.blue()];
    }
}

type Place = (f32, f32);

/// The picture as a sheet to draw on, nothing of it transparent.
fn sheet_of(picture: &RgbImage) -> Option<Pixmap> {
    let mut sheet = Pixmap::new(picture.width(), picture.height())?;
    for (pixel, place) in picture.pixels().zip(sheet.pixels_mut()) {
        let [red, green, blue] = pixel.0;
        *place = tiny_skia::ColorU8::from_rgba(red, green, blue, u8::MAX).premultiply();
    }
    Some(sheet)
}

struct Pen {
    ink: f32,
    width: f32,
    height: f32,
}

impl Pen {
    fn for_picture(picture: &RgbImage) -> Self {
        // At most 2048 of each: nothing is lost.
        let (width, height) = (picture.width() as f32, picture.height() as f32);
        Self { ink: (width.max(height) * INK).max(1.0), width, height }
    }

    fn place(&self, x: f64, y: f64) -> Place {
        (x as f32 * self.width, y as f32 * self.height)
    }

    /// A line in ink with a white casing.
    fn line(&self, sheet: &mut Pixmap, path: Option<Path>) {
        let Some(path) = path else { return };
        stroke(sheet, &path, self.ink * CASED, Color::WHITE);
        stroke(sheet, &path, self.ink, Color::BLACK);
    }

    /// A disc of ink with its number in white.
    fn pin(&self, sheet: &mut Pixmap, (x, y): Place, number: usize) {
        let radius = self.ink * PIN;
        for (radius, colour) in [(radius + self.ink, Color::WHITE), (radius, Color::BLACK)] {
            let Some(disc) = PathBuilder::from_circle(x, y, radius) else { return };
            sheet.fill_path(&disc, &paint(colour), FillRule::Winding, Transform::identity(), None);
        }
        if let Some(digits) = digits(number, (x, y), self.ink * DIGIT) {
            stroke(sheet, &digits, self.ink * 0.8, Color::WHITE);
        }
    }
}

fn paint(colour: Color) -> Paint<'static> {
    let mut paint = Paint { anti_alias: true, ..Paint::default() };
    paint.set_color(colour);
    paint
}

fn stroke(sheet: &mut Pixmap, path: &Path, width: f32, colour: Color) {
    let stroke =
        Stroke { width, line_cap: LineCap::Round, line_join: LineJoin::Round, ..Stroke::default() };
    sheet.stroke_path(path, &paint(colour), &stroke, Transform::identity(), None);
}

fn frame((x1, y1): Place, (x2, y2): Place) -> Option<Path> {
    lines(&[&[(x1, y1), (x2, y1), (x2, y2), (x1, y2), (x1, y1)]])
}

/// A shaft and two barbs that end at the head.
fn arrow(tail: Place, head: Place, barb: f32) -> Option<Path> {
    let (dx, dy) = (head.0 - tail.0, head.1 - tail.1);
    let long = dx.hypot(dy);
    let barb = barb.min(long);
    let along = (dx / long.max(f32::EPSILON), dy / long.max(f32::EPSILON));
    let side = |turn: f32| {
        let back = (-along.0 * barb, -along.1 * barb);
        // A barb stands 30 degrees from the shaft.
        let (sin, cos) = (turn * std::f32::consts::FRAC_PI_6).sin_cos();
        (head.0 + back.0 * cos - back.1 * sin, head.1 + back.0 * sin + back.1 * cos)
    };
    lines(&[&[tail, head], &[side(1.0), head, side(-1.0)]])
}

/// A number in strokes, its middle at a place.
fn digits(number: usize, (x, y): Place, high: f32) -> Option<Path> {
    let text = number.to_string();
    let (wide, gap) = (high * 0.5, high * 0.35);
    let count = text.len() as f32;
    let mut left = x - (count * wide + (count - 1.0) * gap) / 2.0;
    let top = y - high / 2.0;
    let mut strokes: Vec<Vec<Place>> = Vec::new();
    for digit in text.bytes() {
        for line in strokes_of(digit) {
            let place = |(h, v): &(u8, u8)| {
                (left + f32::from(*h) / 2.0 * wide, top + f32::from(*v) / 4.0 * high)
            };
            strokes.push(line.iter().map(place).collect());
        }
        left += wide + gap;
    }
    let strokes: Vec<&[Place]> = strokes.iter().map(Vec::as_slice).collect();
    lines(&strokes)
}

/// The strokes of a digit on a grid of 2 × 4.
const fn strokes_of(digit: u8) -> &'static [&'static [(u8, u8)]] {
    match digit {
        b'0' => &[&[(0, 0), (2, 0), (2, 4), (0, 4), (0, 0)]],
        b'1' => &[&[(0, 1), (1, 0), (1, 4)]],
        b'2' => &[&[(0, 0), (2, 0), (2, 2), (0, 2), (0, 4), (2, 4)]],
        b'3' => &[&[(0, 0), (2, 0), (2, 4), (0, 4)], &[(0, 2), (2, 2)]],
        b'4' => &[&[(0, 0), (0, 2), (2, 2)], &[(2, 0), (2, 4)]],
        b'5' => &[&[(2, 0), (0, 0), (0, 2), (2, 2), (2, 4), (0, 4)]],
        b'6' => &[&[(2, 0), (0, 0), (0, 4), (2, 4), (2, 2), (0, 2)]],
        b'7' => &[&[(0, 0), (2, 0), (1, 4)]],
        b'8' => &[&[(0, 0), (2, 0), (2, 4), (0, 4), (0, 0)], &[(0, 2), (2, 2)]],
        _ => &[&[(2, 2), (0, 2), (0, 0), (2, 0), (2, 4), (0, 4)]],
    }
}

fn lines(lines: &[&[Place]]) -> Option<Path> {
    let mut path = PathBuilder::new();
    for line in lines {
        for (place, (x, y)) in line.iter().enumerate() {
            if place == 0 {
                path.move_to(*x, *y);
            } else {
                path.line_to(*x, *y);
            }
        }
    }
    path.finish()
}

#[cfg(test)]
mod tests {
    use image::{Rgb, RgbImage};

    use super::super::marks::Mark;
    use super::draw_on;

    const GREY: Rgb<u8> = Rgb([120, 130, 140]);

    fn drawn(width: u32, height: u32, marks: &[Mark]) -> RgbImage {
        let mut picture = RgbImage::from_pixel(width, height, GREY);
        draw_on(&mut picture, marks);
        picture
    }

    fn pin(x: f64, y: f64) -> Mark {
        Mark::Pin { x, y, caption: String::new() }
    }

    #[test]
    fn nothing_but_the_marked_places_changes() {
        let marks = [pin(0.25, 0.5)];
        let picture = drawn(1000, 500, &marks);
        // Radius 5.5 × 4 px, and 4 px of casing.
        let far =
            |x: u32, y: u32| f64::from(x).mul_add(1.0, -250.0).hypot(f64::from(y) - 250.0) > 28.0;
        let mut inside = 0;
        for (x, y, pixel) in picture.enumerate_pixels() {
            if far(x, y) {
                assert_eq!(*pixel, GREY, "{x} {y}");
            } else {
                inside += u32::from(*pixel != GREY);
            }
        }
        assert!(inside > 1500);
    }

    #[test]
    fn an_arrow_goes_from_its_tail_to_its_head_and_a_box_is_empty_inside() {
        let arrow = Mark::Arrow { x1: 0.1, y1: 0.1, x2: 0.1, y2: 0.9, caption: String::new() };
        let frame = Mark::Box { x1: 0.3, y1: 0.2, x2: 0.9, y2: 0.8, caption: String::new() };
        let picture = drawn(1000, 1000, &[arrow, frame]);
        let black = Rgb([0, 0, 0]);
        assert_eq!(*picture.get_pixel(100, 500), black);
        assert_eq!(*picture.get_pixel(100, 105), black);
        assert_eq!(*picture.get_pixel(300, 500), black);
        assert_eq!(*picture.get_pixel(600, 800), black);
        assert_eq!(*picture.get_pixel(600, 500), GREY, "what is boxed in stays to be seen");
        // The barbs stand on the head's side.
        let dark = |y: u32| (60..140).filter(|x| *picture.get_pixel(*x, y) == black).count();
        assert!(dark(880) > dark(400));
    }

    #[test]
    fn pins_are_told_from_each_other_by_their_numbers() {
        let [one, two] = [[pin(0.5, 0.5)].to_vec(), [pin(-9.0, -9.0), pin(0.5, 0.5)].to_vec()];
        assert_ne!(drawn(400, 400, &one), drawn(400, 400, &two));
    }

    #[test]
    fn the_smallest_picture_is_drawn_on_without_harm() {
        let all = [
            pin(0.5, 0.5),
            Mark::Arrow { x1: 0.0, y1: 0.0, x2: 1.0, y2: 1.0, caption: String::new() },
            Mark::Box { x1: 0.0, y1: 0.0, x2: 0.0, y2: 0.0, caption: String::new() },
        ];
        assert_eq!(drawn(1, 1, &all).dimensions(), (1, 1));
    }
}
