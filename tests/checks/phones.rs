//! What a phone's project is given can be used as it is: icons in the sizes they are asked for in, texts for every
//! permission, and no way to a network. No build for a phone is tried here: `src-tauri/MOBILE.md` says what was.

use std::path::{Path, PathBuf};

use image::{ColorType, DynamicImage, GenericImageView};

/// Android's densities: a layer of an icon, a whole icon, pixels. Source: 108 and 48 dp at 160 to 640 dots an inch,
/// Android's guide to adaptive icons, from memory; `tauri icon` writes the same.
const DENSITIES: [(&str, u32, u32); 5] = [
    ("mdpi", 108, 48),
    ("hdpi", 162, 72),
    ("xhdpi", 216, 96),
    ("xxhdpi", 324, 144),
    ("xxxhdpi", 432, 192),
];
/// Icons of iOS by their name. Source: what `tauri icon` 2.12 writes and its project asks for.
const IOS: [(&str, u32); 18] = [
    ("20x20@1x", 20),
    ("20x20@2x", 40),
    ("20x20@2x-1", 40),
    ("20x20@3x", 60),
    ("29x29@1x", 29),
    ("29x29@2x", 58),
    ("29x29@2x-1", 58),
    ("29x29@3x", 87),
    ("40x40@1x", 40),
    ("40x40@2x", 80),
    ("40x40@2x-1", 80),
    ("40x40@3x", 120),
    ("60x60@2x", 120),
    ("60x60@3x", 180),
    ("76x76@1x", 76),
    ("76x76@2x", 152),
    ("83.5x83.5@2x", 167),
    ("512@2x", 1024),
];
/// Of a layer 108 wide a launcher leaves a circle this wide alone. Source: as above.
const LEFT_ALONE: (u32, u32) = (66, 108);
/// What the system asks a person for on iOS.
const ASKED_FOR: [&str; 3] = [
    "NSCameraUsageDescription",
    "NSPhotoLibraryUsageDescription",
    "NSPhotoLibraryAddUsageDescription",
];

fn root() -> PathBuf {
    Path::new(env!("CARGO_MANIFEST_DIR")).parent().expect("the checks live in a folder").to_owned()
}

fn icon(path: &str) -> DynamicImage {
    let file = root().join("icons").join(path);
    image::open(&file).unwrap_or_else(|error| panic!("{path}: {error}"))
}

fn text(path: &str) -> String {
    std::fs::read_to_string(root().join(path)).unwrap_or_else(|error| panic!("{path}: {error}"))
}

#[test]
fn an_android_launcher_cuts_nothing_off() {
    for (density, layer, whole) in DENSITIES {
        let of = |name: &str| icon(&format!("android/mipmap-{density}/ic_launcher{name}.png"));
        for name in ["", "_round"] {
            assert_eq!(of(name).dimensions(), (whole, whole), "{density}{name}");
        }
        let paper = of("_background");
        assert_eq!(paper.dimensions(), (layer, layer), "{density}");
        assert!(paper.to_rgba8().pixels().all(|pixel| pixel[3] == 255), "{density}: paper");
        for name in ["_foreground", "_monochrome"] {
            let drawn = of(name);
            assert_eq!(drawn.dimensions(), (layer, layer), "{density}{name}");
            let drawn: Vec<f64> = drawn
                .to_rgba8()
                .enumerate_pixels()
                .filter(|(_, _, pixel)| pixel[3] > 0)
                .map(|(x, y, _)| from_the_middle(layer, x, y))
                .collect();
            let furthest = drawn.iter().copied().fold(0.0, f64::max);
            let free = f64::from(layer * LEFT_ALONE.0) / f64::from(LEFT_ALONE.1) / 2.0;
            assert!(furthest <= free, "{density}{name}: drawn {furthest} px out of {free}");
            // An empty layer would keep inside too.
            assert!(
                furthest > free * 0.8,
                "{density}{name}: drawn only {furthest} px out of {free}"
            );
        }
    }
}

/// How far the outermost corner of a pixel is from the middle of a picture, pixels.
fn from_the_middle(wide: u32, x: u32, y: u32) -> f64 {
    let middle = f64::from(wide) / 2.0;
    let out = |at: u32| (f64::from(at) - middle).abs().max((f64::from(at) + 1.0 - middle).abs());
    out(x).hypot(out(y))
}

#[test]
fn icons_of_ios_have_their_size_and_no_opacity() {
    for (name, pixels) in IOS {
        let icon = icon(&format!("ios/AppIcon-{name}.png"));
        assert_eq!(icon.dimensions(), (pixels, pixels), "{name}");
        assert_eq!(icon.color(), ColorType::Rgb8, "{name}");
    }
}

#[test]
fn icons_of_a_desktop_have_the_size_of_their_name() {
    let sizes = [("32x32", 32), ("48x48", 48), ("64x64", 64), ("128x128", 128)];
    for (name, pixels) in sizes.into_iter().chain([("128x128@2x", 256), ("icon", 512)]) {
        assert_eq!(icon(&format!("{name}.png")).dimensions(), (pixels, pixels), "{name}");
    }
}

#[test]
fn every_permission_of_ios_is_asked_for_with_a_reason_in_both_languages() {
    let plist = text("src-tauri/Info.ios.plist");
    let [english, german] = ["en", "de"].map(|language| {
        let file = format!("src-tauri/ios/{language}.lproj/InfoPlist.strings");
        let strings = text(&file);
        ASKED_FOR.map(|key| between(&strings, &format!("\"{key}\" = \""), "\";").to_owned())
    });
    for ((key, english), german) in ASKED_FOR.iter().zip(english).zip(german) {
        let key = format!("<key>{key}</key>");
        let given = between(&plist, &key, "</string>").trim().trim_start_matches("<string>");
        assert_eq!(given, english, "{key}");
        assert!(german.split(' ').count() > 4, "{key}: {german}");
        assert_ne!(english, german, "{key}");
    }
}

/// What stands between two marks.
fn between<'a>(text: &'a str, before: &str, after: &str) -> &'a str {
    let (_, rest) = text.split_once(before).unwrap_or_else(|| panic!("there is no {before}"));
    rest.split_once(after).unwrap_or_else(|| panic!("{before} does not end")).0
}

#[test]
fn on_android_nothing_leaves_and_the_camera_needs_no_permission() {
    let manifest = text("src-tauri/android/AndroidManifest.xml");
    // Only what is said to the system, not what is said of it.
    let said: String =
        manifest.split("<!--").map(|part| part.split("-->").last().unwrap()).collect();
    let permissions: Vec<&str> = said.matches("<uses-permission").collect();
    assert_eq!(permissions.len(), 1, "{said}");
    let network = between(&said, "<uses-permission", "/>");
    assert!(network.contains("permission.INTERNET\""), "{network}");
    assert!(network.contains("tools:node=\"remove\""), "{network}");
    assert!(between(&said, "<queries>", "</queries>").contains("IMAGE_CAPTURE"), "{said}");
    assert!(said.contains("android:allowBackup=\"false\""), "{said}");
}

#[test]
fn phones_may_run_the_same_commands_as_desktops() {
    let capability: serde_json::Value =
        serde_json::from_str(&text("src-tauri/capabilities/main.json")).expect("a capability");
    let platforms = capability["platforms"].as_array().expect("platforms");
    for platform in ["android", "iOS", "linux"] {
        assert!(platforms.iter().any(|named| named == platform), "{platform}");
    }
    let manifest: toml::Table = toml::from_str(&text("src-tauri/Cargo.toml")).expect("a manifest");
    let kinds = manifest["lib"]["crate-type"].as_array().expect("kinds of library");
    // Android loads the first, Xcode links the second.
    for kind in ["cdylib", "staticlib"] {
        assert!(kinds.iter().any(|named| named.as_str() == Some(kind)), "{kind}");
    }
}
