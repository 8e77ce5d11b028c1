//! Bytes with something in them changed: flipped, left out, put in, doubled, cut off.

use super::tape::Tape;

/// Figures that lengths and counts go wrong at.
const EDGES: [&[u8]; 10] = [
    &[0],
    &[0xff],
    &[0x7f],
    &[0x80],
    &[0, 0],
    &[0xff, 0xff],
    &[0, 0, 0, 0],
    &[0xff, 0xff, 0xff, 0xff],
    &[0x7f, 0xff, 0xff, 0xff],
    &[0x80, 0, 0, 0],
];

/// Changes a few things, at most so many.
pub fn change(tape: &mut Tape<'_>, bytes: &mut Vec<u8>, most: usize) {
    for _ in 0..tape.below(most + 1) {
        change_one(tape, bytes);
    }
}

pub fn change_one(tape: &mut Tape<'_>, bytes: &mut Vec<u8>) {
    let at = tape.below(bytes.len());
    // Mostly short, as a field is.
    let longest = *tape.pick(&[2, 8, 64, 4096]);
    let length = tape.below(longest).min(bytes.len() - at);
    match tape.below(8) {
        0 if at < bytes.len() => bytes[at] ^= 1 << (tape.byte() % 8),
        1 if at < bytes.len() => bytes[at] = tape.byte(),
        2 => bytes.truncate(at),
        3 => drop(bytes.drain(at..at + length)),
        4 => {
            let piece: Vec<u8> = bytes[at..at + length].to_vec();
            let to = tape.below(bytes.len() + 1);
            bytes.splice(to..to, piece);
        }
        5 => bytes[at..at + length].fill(tape.byte()),
        6 => {
            let edge = *tape.pick(&EDGES);
            let end = (at + edge.len()).min(bytes.len());
            bytes.splice(at..end, edge.iter().copied());
        }
        _ => {
            let piece: Vec<u8> = (0..length.min(16)).map(|_| tape.byte()).collect();
            let end = (at + piece.len()).min(bytes.len());
            bytes.splice(at..end, piece);
        }
    }
}
