//! A person who taps what they see, and misses by a little.

use rand::Rng;
use rand_chacha::ChaCha8Rng;

use super::scene::Scene;
use super::space::Pixel;

/// How far a tap misses along each axis, px, one sigma: a finger that drags a point under a loupe.
/// What the targets ask for.
pub const MISS: f64 = 2.0;

/// What was tapped in a photo.
pub struct Taps {
    /// The corners of the card, in order round it, from any of them, either way round.
    pub corners: [Pixel; 4],
    /// The two edges of each pin's tip.
    pub pins: [[Pixel; 2]; 2],
}

/// The taps on a scene.
pub fn taps(scene: &Scene, lot: &mut ChaCha8Rng) -> Taps {
    let mut corners = scene.corners().map(|at| missed(at, lot));
    corners.rotate_left(lot.random_range(0..4));
    if lot.random_bool(0.5) {
        corners.reverse();
    }
    let pins = scene.plug.pins.each_ref().map(|pin| {
        let mut ends = pin.ends.map(|end| missed(scene.camera.sees(end), lot));
        if lot.random_bool(0.5) {
            ends.reverse();
        }
        ends
    });
    Taps { corners, pins }
}

fn missed(at: Pixel, lot: &mut ChaCha8Rng) -> Pixel {
    at.map(|part| part + MISS * bell(lot))
}

/// A number from the bell curve of mean 0 and sigma 1 (Box and Muller).
pub fn bell(lot: &mut ChaCha8Rng) -> f64 {
    let away: f64 = 1.0 - lot.random::<f64>();
    let round = lot.random_range(0.0..std::f64::consts::TAU);
    (-2.0 * away.ln()).sqrt() * round.cos()
}
