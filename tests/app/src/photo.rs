//! Photos, given to the app through its own inputs as a person gives them, and looked at on the screen.

use std::path::{Path, PathBuf};

use fantoccini::Locator;
use serde_json::{Value, json};

use super::app::App;

/// The input of "add photos from files".
pub const FILES: &str = "input[type=file]:not([capture])";
/// The input of the camera.
pub const CAMERA: &str = "input[type=file][capture]";

/// An invented radio, drawn for the checks. Its pixels lie on their side, as of a phone that was held
/// upright: the file says so (EXIF orientation 6), and names a camera and a place on the map.
pub fn held_upright() -> PathBuf {
    Path::new(env!("CARGO_MANIFEST_DIR")).join("pictures/held_upright.jpg")
}

/// The camera that the file names.
pub const CAMERA_NAME: &str = "Quibbard Pocket 7";

/// Chooses a file in one of the inputs of the screen.
///
/// # Panics
/// When the screen has no such input.
pub async fn choose(app: &App, input: &str, file: &Path) {
    let input = app.client.wait().for_element(Locator::Css(input)).await.expect("an input");
    // It is never seen or tapped itself: a button opens the camera or the files.
    input.send_keys(file.to_str().expect("a plain path")).await.expect("the input takes a file");
}

/// Waits until a picture inside of something is there and decoded; gives its size in pixels.
///
/// # Panics
/// When it does not come, or is no picture.
pub async fn decoded(app: &App, within: &str, name: &str) -> (u64, u64) {
    let script = "const [within, name] = arguments;
        const named = (element) => [element.getAttribute('aria-label'), element.alt].includes(name);
        const found = [...document.querySelectorAll(within)].find(named);
        // A photo with marks is drawn with them: what it shows is loaded once more to see its pixels.
        const drawn = found?.querySelector('image');
        if (drawn && !found.pixels) {
            found.pixels = new Image();
            found.pixels.src = drawn.href.baseVal;
        }
        const image = found?.pixels ?? found?.querySelector('img') ?? found;
        return image?.complete && image.naturalWidth > 0
            ? [image.naturalWidth, image.naturalHeight] : null;";
    let what = format!("no picture in {within} named {name:?}");
    let size = app.until(&what, script, vec![json!(within), json!(name)]).await;
    let side = |at: usize| size[at].as_u64().expect("pixels");
    (side(0), side(1))
}

/// The files below a folder of the app, with what is in them, in the order of their names; none where there
/// is no such folder.
///
/// # Panics
/// When they cannot be read.
pub fn kept_files(folder: &Path) -> Vec<(PathBuf, Vec<u8>)> {
    let mut files = Vec::new();
    let mut folders: Vec<_> = folder.is_dir().then(|| folder.to_owned()).into_iter().collect();
    while let Some(folder) = folders.pop() {
        for entry in std::fs::read_dir(&folder).expect("a folder") {
            let path = entry.expect("an entry").path();
            if path.is_dir() {
                folders.push(path);
            } else {
                files.push((path.clone(), std::fs::read(&path).expect("a file")));
            }
        }
    }
    files.sort();
    files
}

/// The photos of an inspection.
///
/// # Panics
/// When the app gave none.
pub fn photos(view: &Value) -> &Vec<Value> {
    view["photos"].as_array().expect("a list of photos")
}
