//! A card, a plug beside it and a camera above both, drawn by lot from a seed.
//!
//! The card lies on something as high as a book; the plug stands beside it, its blades up and seen
//! from above. Nothing here knows the code that is judged.
//!
//! What it leaves out: lenses that bend straight lines, worn or bevelled blades, glare, and a hand.

use rand::Rng;
use rand_chacha::ChaCha8Rng;

use super::plug::{Kind, Plug};
use super::space::{Camera, Pixel, Vector, cross, minus, plus, times, turned, unit};

/// Long and short side of an ID-1 card, mm. ISO/IEC 7810:2019, from memory, high.
pub const CARD: [f64; 2] = [85.60, 53.98];

/// The sides of a photo, px: 4:3, as most phones take them, and as long as it is kept.
const SIDES: [f64; 2] = [2048.0, 1536.0];

/// How far what is tapped stays inside the photo, px.
const MARGIN: f64 = 30.0;

/// What a run of scenes has in common.
#[derive(Clone, Copy)]
pub struct Lot {
    /// The plug.
    pub kind: Kind,
    /// Least and most of the photo's longer side that the card's longer side would fill, seen straight
    /// on.
    pub share: [f64; 2],
    /// The furthest the camera leans over, degrees.
    pub tilt: f64,
}

/// The scenes that the targets speak of: either plug with flat blades, tilts up to 35°.
pub const USUAL: Lot = Lot { kind: Kind::EitherBlades, share: [0.30, 0.55], tilt: 35.0 };

/// The same from too far away: a blade is some 15 px wide.
pub const FAR: Lot = Lot { share: [0.06, 0.12], ..USUAL };

/// The same from further away than is usual: a blade is some 35 px wide.
pub const FURTHER: Lot = Lot { share: [0.15, 0.30], ..USUAL };

/// Plugs that have no such blades. CEE 7/16, verified; CEE 7/17, from memory, high; BS 1363, verified;
/// AS/NZS 3112, verified, here with the spacing of the others.
pub const OTHERS: [Lot; 4] = [
    Lot { kind: Kind::Round { diameter: 4.0, apart: 17.5 }, ..USUAL },
    Lot { kind: Kind::Round { diameter: 4.8, apart: 19.0 }, ..USUAL },
    Lot { kind: Kind::Apart(22.2), ..USUAL },
    Lot { kind: Kind::Slanted(30.0), ..USUAL },
];

/// One scene.
pub struct Scene {
    /// Width and height of the photo, px.
    pub size: [f64; 2],
    /// The camera.
    pub camera: Camera,
    /// The plug.
    pub plug: Plug,
    /// How far the camera leans over, degrees.
    pub tilt: f64,
}

/// The corners of the card, in order round it.
pub fn card() -> [Vector; 4] {
    let [long, short] = CARD;
    [[0.0, 0.0, 0.0], [long, 0.0, 0.0], [long, short, 0.0], [0.0, short, 0.0]]
}

impl Scene {
    /// The scene of a lot; drawn anew until card and blades are in the photo.
    pub fn drawn(lot: Lot, lot_of: &mut ChaCha8Rng) -> Self {
        let tilt = lot_of.random_range(0.0..lot.tilt);
        let mut size = SIDES;
        if lot_of.random_bool(0.5) {
            size.reverse();
        }
        loop {
            let plug = Plug::drawn(lot.kind, beside(lot_of), lot_of);
            let camera = camera(lot, tilt, size, plug.middle, lot_of);
            let scene = Self { size, camera, plug, tilt };
            if scene.tapped().all(|at| scene.shows(at)) {
                return scene;
            }
        }
    }

    /// The corners of the card as the camera sees them.
    pub fn corners(&self) -> [Pixel; 4] {
        card().map(|corner| self.camera.sees(corner))
    }

    fn tapped(&self) -> impl Iterator<Item = Pixel> {
        let tips = self.plug.pins.iter().flat_map(|pin| pin.ends);
        self.corners().into_iter().chain(tips.map(|end| self.camera.sees(end)))
    }

    fn shows(&self, at: Pixel) -> bool {
        at.iter().zip(self.size).all(|(at, side)| (MARGIN..side - MARGIN).contains(at))
    }
}

/// Where a plug stands: 15 to 35 mm off one of the card's sides, somewhere along it.
fn beside(lot: &mut ChaCha8Rng) -> [f64; 2] {
    let [long, short] = CARD;
    let off = lot.random_range(15.0..35.0);
    let along = lot.random_range(0.1..0.9);
    match lot.random_range(0..4) {
        0 => [along * long, -off],
        1 => [along * long, short + off],
        2 => [-off, along * short],
        _ => [long + off, along * short],
    }
}

fn camera(lot: Lot, tilt: f64, size: [f64; 2], plug: Vector, lot_of: &mut ChaCha8Rng) -> Camera {
    let diagonal = size[0].hypot(size[1]);
    let field = lot_of.random_range(60.0_f64..80.0).to_radians();
    let focal = diagonal / 2.0 / (field / 2.0).tan();
    let share = lot_of.random_range(lot.share[0]..lot.share[1]);
    let distance = focal * CARD[0] / (share * SIDES[0]);
    let middle_of_card = [CARD[0] / 2.0, CARD[1] / 2.0, 0.0];
    let to_plug = minus([plug[0], plug[1], 0.0], middle_of_card);
    let mut aim = plus(middle_of_card, times(to_plug, lot_of.random_range(0.2..0.6)));
    aim[0] += lot_of.random_range(-12.0..12.0);
    aim[1] += lot_of.random_range(-12.0..12.0);

    let toward = lot_of.random_range(0.0..std::f64::consts::TAU);
    let lean = tilt.to_radians();
    let up = [lean.sin() * toward.cos(), lean.sin() * toward.sin(), lean.cos()];
    let forward = times(up, -1.0);
    let some = if up[0].abs() < 0.5 { [1.0, 0.0, 0.0] } else { [0.0, 1.0, 0.0] };
    let roll = lot_of.random_range(0.0..std::f64::consts::TAU);
    let right = turned(unit(cross(some, forward)), forward, roll);
    // The axis of a real camera meets its picture a little off the middle.
    let off = |side: f64, lot_of: &mut ChaCha8Rng| side * lot_of.random_range(0.493..0.507);
    Camera {
        centre: plus(aim, times(up, distance)),
        axes: [right, cross(forward, right), forward],
        focal,
        middle: [off(size[0], lot_of), off(size[1], lot_of)],
    }
}
