//! Turns a picture the way it was held.
//!
//! Most pictures of a phone lie on their side. A column at a time, each pixel of it lies in another line of the
//! processor's cache; a few columns at a time, each line that is read or written is used up while it is there.

use image::metadata::Orientation;
use image::{DynamicImage, RgbImage};

/// Columns that are turned at once: 48 bytes of a row, most of a line of the cache.
const COLUMNS: usize = 16;

/// Which way a quarter turn goes.
#[derive(Clone, Copy, PartialEq, Eq)]
enum Quarter {
    Clockwise,
    Back,
}

/// The picture as it is looked at.
pub(super) fn turned(picture: RgbImage, orientation: Orientation) -> RgbImage {
    match orientation {
        Orientation::NoTransforms => picture,
        Orientation::Rotate90 => quarter(&picture, Quarter::Clockwise),
        Orientation::Rotate270 => quarter(&picture, Quarter::Back),
        // Half a turn, and the mirrored ones that no phone writes.
        _ => {
            let mut picture = DynamicImage::ImageRgb8(picture);
            picture.apply_orientation(orientation);
            picture.into_rgb8()
        }
    }
}

fn quarter(picture: &RgbImage, way: Quarter) -> RgbImage {
    let (width, height) = picture.dimensions();
    let mut turned = RgbImage::new(height, width);
    let (from, _) = picture.as_raw().as_chunks::<3>();
    let (to, _) = turned.as_chunks_mut::<3>();
    // A column of what goes in is a row of what comes out.
    let (across, down) = (width.max(1) as usize, height.max(1) as usize);
    let mut rows: Vec<&[[u8; 3]]> = from.chunks_exact(across).collect();
    let mut columns: Vec<_> = to.chunks_exact_mut(down).map(|row| row.iter_mut()).collect();
    match way {
        Quarter::Clockwise => rows.reverse(),
        Quarter::Back => columns.reverse(),
    }
    for (band, columns) in columns.chunks_mut(COLUMNS).enumerate() {
        for row in &rows {
            let part = row.get(band * COLUMNS..).unwrap_or_default();
            for (column, pixel) in columns.iter_mut().zip(part) {
                if let Some(next) = column.next() {
                    *next = *pixel;
                }
            }
        }
    }
    turned
}

#[cfg(test)]
mod tests {
    use super::turned;
    use image::metadata::Orientation;
    use image::{DynamicImage, Rgb, RgbImage};

    #[test]
    fn every_way_of_holding_comes_out_as_pixel_by_pixel() {
        for (width, height) in [(1, 1), (1, 5), (5, 1), (16, 16), (17, 15), (130, 200), (191, 64)] {
            let picture = RgbImage::from_fn(width, height, |x, y| {
                Rgb([x as u8, y as u8, (x * 7 + y * 13) as u8])
            });
            for exif in 1..=8 {
                let orientation = Orientation::from_exif(exif).expect("one of eight");
                let mut expected = DynamicImage::ImageRgb8(picture.clone());
                expected.apply_orientation(orientation);
                let expected = expected.into_rgb8();
                let found = turned(picture.clone(), orientation);
                assert!(found == expected, "{width} × {height}, {orientation:?}");
            }
        }
    }
}
