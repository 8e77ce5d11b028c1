//! Takes one picture in and writes its two files: `ingest PICTURE FOLDER`, to be timed as a process.

use std::path::PathBuf;

use coldchassis_core::photo::{Files, ingest};

fn main() {
    let mut arguments = std::env::args().skip(1).map(PathBuf::from);
    let picture = arguments.next().expect("a picture");
    let folder = arguments.next().expect("a folder");
    let bytes = std::fs::read(picture).expect("the picture can be read");
    let photo = ingest(&bytes).expect("the picture can be taken in");
    Files::of(folder).put(&photo).expect("the folder can be written to");
    println!("{} {}x{}", photo.digest, photo.width, photo.height);
}
