//! Drawings that come as SVG.

use std::sync::Arc;

use krilla_svg::{SurfaceExt, SvgSettings};
use usvg::ImageHrefResolver;
use usvg::fontdb::Database;

use super::letters::Letters;

/// A drawing with the letters of the report; nothing where it cannot be read.
pub(super) fn tree(svg: &str) -> Option<usvg::Tree> {
    let mut letters = Database::new();
    for file in Letters::files() {
        letters.load_font_data(file.to_vec());
    }
    letters.set_sans_serif_family("Noto Sans");
    let options = usvg::Options {
        fontdb: Arc::new(letters),
        font_family: "Noto Sans".to_owned(),
        image_href_resolver: no_pictures(),
        ..usvg::Options::default()
    };
    usvg::Tree::from_str(svg, &options).ok()
}

/// A drawing has none, and a name in one must not have a file of this device read.
fn no_pictures() -> ImageHrefResolver<'static> {
    ImageHrefResolver {
        resolve_data: Box::new(|_, _, _| None),
        resolve_string: Box::new(|_, _| None),
    }
}

/// Draws it from the upper left corner on, at a size.
pub(super) fn draw(
    surface: &mut krilla::surface::Surface<'_>,
    tree: &usvg::Tree,
    (width, height): (f32, f32),
) -> Option<()> {
    let size = krilla::geom::Size::from_wh(width, height)?;
    surface.draw_svg(tree, size, SvgSettings::default())
}

#[cfg(test)]
mod tests {
    use super::tree;

    #[test]
    fn a_picture_that_a_drawing_names_is_not_read() {
        let folder = tempfile::tempdir().unwrap();
        let picture = folder.path().join("private.png");
        let dot = image::RgbImage::from_pixel(2, 2, image::Rgb([200, 20, 20]));
        dot.save(&picture).unwrap();
        let svg = format!(
            r#"<svg xmlns="http://www.w3.org/2000/svg" width="9" height="9"><image href="{}" width="9" height="9"/></svg>"#,
            picture.display()
        );
        assert!(!tree(&svg).unwrap().root().has_children(), "{svg}");
        let shape = svg.replace("<image", "<rect").replace("href=", "data-href=");
        assert!(tree(&shape).unwrap().root().has_children(), "{shape}");
    }
}
