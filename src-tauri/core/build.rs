//! Rebuilds the core when what is embedded in it changes.

fn main() {
    for embedded in ["../../migrations", "words", "data"] {
        println!("cargo:rerun-if-changed={embedded}");
    }
}
