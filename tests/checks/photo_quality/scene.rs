//! Scenes as an inspector sees them: a bench or a cabinet, and on it plates with screws and print,
//! cords, tubes and capacitors.

use rand::Rng;
use rand_chacha::ChaCha8Rng;

use super::canvas::{Canvas, Light, Noise, Plate, scaled};

/// Size of a picture, px: what a phone's 4 : 3 photo is kept as.
pub const SIZE: (usize, usize) = (2048, 1536);

/// A drawn scene, before any camera.
pub fn scene(random: &mut ChaCha8Rng) -> Canvas {
    let mut canvas = bench(random);
    for _ in 0..random.random_range(1..4) {
        plate(&mut canvas, random);
    }
    for _ in 0..random.random_range(4..10) {
        match random.random_range(0..5) {
            0 => cord(&mut canvas, random),
            1 => tube(&mut canvas, random),
            2 => capacitor(&mut canvas, random),
            3 => label(&mut canvas, random),
            _ => screw(&mut canvas, random),
        }
    }
    lit(&mut canvas, random);
    canvas
}

/// A wall or a bare lid: grain too faint to see, and light from one side.
pub fn bare(random: &mut ChaCha8Rng) -> Canvas {
    let noise = Noise::drawn(random);
    let base = [0.3, 0.28, 0.25].map(|part: f32| part * random.random_range(0.4..1.6));
    let mut canvas = Canvas::new(SIZE.0, SIZE.1, |x, y| {
        scaled(base, 0.98 + 0.04 * noise.at(x / 90.0, y / 90.0))
    });
    lit(&mut canvas, random);
    canvas
}

/// Light that falls off to one side, as from a window.
fn lit(canvas: &mut Canvas, random: &mut ChaCha8Rng) {
    let (angle, fall) = (random.random_range(0.0..6.3_f32), random.random_range(0.0..0.45_f32));
    let (sin, cos) = angle.sin_cos();
    let (width, across) = (canvas.width, SIZE.0 as f32);
    for (i, part) in canvas.light.iter_mut().enumerate() {
        let (x, y) = ((i / 3 % width) as f32, (i / 3 / width) as f32);
        let along = ((x - across / 2.0) * cos + (y - across * 0.375) * sin) / across;
        *part *= 1.0 + fall * along * 1.6;
    }
}

/// What everything lies on.
fn bench(random: &mut ChaCha8Rng) -> Canvas {
    let (coarse, fine) = (Noise::drawn(random), Noise::drawn(random));
    let tone = random.random_range(0.35..1.3_f32);
    let wide = random.random_range(14.0..40.0_f32);
    match random.random_range(0..4) {
        // Wood: rings warped along the grain, and pores.
        0 | 1 => Canvas::new(SIZE.0, SIZE.1, |x, y| {
            let warp = coarse.at(x / 420.0, y / 120.0) * 60.0;
            let ring = ((y + warp) / wide).sin() * 0.5 + 0.5;
            let pore = fine.at(x / 40.0, y / 2.5);
            scaled([0.30, 0.16, 0.07], tone * (0.6 + 0.35 * ring + 0.35 * pore))
        }),
        // A cloth or a mat, woven.
        2 => Canvas::new(SIZE.0, SIZE.1, |x, y| {
            let thread = (x / wide * 6.0).sin() * (y / wide * 6.0).sin();
            scaled(
                [0.10, 0.12, 0.13],
                tone * (1.0 + 0.3 * thread + 0.3 * fine.at(x / 5.0, y / 5.0)),
            )
        }),
        // A painted bench, plain.
        _ => Canvas::new(SIZE.0, SIZE.1, |x, y| {
            scaled([0.28, 0.30, 0.28], tone * (0.95 + 0.1 * coarse.at(x / 200.0, y / 200.0)))
        }),
    }
}

fn place(random: &mut ChaCha8Rng) -> [f32; 2] {
    [random.random_range(100.0..1950.0), random.random_range(100.0..1430.0)]
}

/// A chassis or a back panel: brushed or painted, with screws, holes and print.
fn plate(canvas: &mut Canvas, random: &mut ChaCha8Rng) {
    let plate = Plate {
        at: [random.random_range(500.0..1550.0), random.random_range(400.0..1150.0)],
        half: [random.random_range(300.0..750.0), random.random_range(220.0..520.0)],
        turn: random.random_range(-0.5..0.5),
        round: random.random_range(4.0..40.0),
    };
    let brushed = Noise::drawn(random);
    let tone = random.random_range(0.03..0.6_f32);
    let streak = random.random_range(0.0..0.3_f32);
    let shadow = Plate { at: [plate.at[0] + 9.0, plate.at[1] + 12.0], ..plate };
    canvas.plate(&shadow, |_, _| [0.012, 0.011, 0.01]);
    canvas.plate(&plate, |x, y| {
        scaled([1.0, 0.98, 0.94], tone * (1.0 - streak + streak * brushed.at(x * 9.0, y * 260.0)))
    });
    for (along, across) in [(-0.9, -0.85), (0.9, -0.85), (-0.9, 0.85), (0.9, 0.85)] {
        screw_at(canvas, plate.point(along, across), random.random_range(14.0..30.0), random);
    }
    for hole in 0..random.random_range(0..9) {
        let at = plate.point(-0.7 + 0.18 * hole as f32, 0.5);
        canvas.disc(at, 16.0, |_, _| [0.008, 0.008, 0.008]);
    }
    let ink = if tone > 0.2 { [0.01; 3] } else { [0.6, 0.58, 0.5] };
    for line in 0..random.random_range(1..4) {
        let across = -0.5 + 0.22 * line as f32;
        let size = random.random_range(14.0..34.0);
        print(canvas, &plate, [-0.6, across], size, ink, random);
    }
}

/// A line of marks like letters: strokes of a pen in a grid, no text of any kind.
fn print(
    canvas: &mut Canvas,
    on: &Plate,
    from: [f32; 2],
    size: f32,
    ink: Light,
    random: &mut ChaCha8Rng,
) {
    let (step_x, step_y) = (size * 0.3 / on.half[0], size * 0.5 / on.half[1]);
    let letters = random.random_range(5..16);
    for letter in 0..letters {
        let left = from[0] + letter as f32 * step_x * 2.8;
        if left + step_x * 2.0 > 0.92 {
            break;
        }
        for _ in 0..random.random_range(2..5) {
            let mut corner = || {
                let column = random.random_range(0..3) as f32;
                let row = random.random_range(-1..2) as f32;
                on.point(left + column * step_x, from[1] + row * step_y)
            };
            let (a, b) = (corner(), corner());
            canvas.line(a, b, (size * 0.13).max(1.6), ink);
        }
    }
}

fn screw(canvas: &mut Canvas, random: &mut ChaCha8Rng) {
    let at = place(random);
    screw_at(canvas, at, random.random_range(16.0..60.0), random);
}

fn screw_at(canvas: &mut Canvas, at: [f32; 2], radius: f32, random: &mut ChaCha8Rng) {
    let turn = random.random_range(0.0..3.2_f32);
    canvas.disc([at[0] + 3.0, at[1] + 4.0], radius * 1.05, |_, _| [0.01; 3]);
    canvas.disc(at, radius, |x, y| scaled([0.42, 0.40, 0.36], 1.0 - 0.45 * (x + y) - 0.2 * x * y));
    let (sin, cos) = turn.sin_cos();
    let reach = [radius * 0.8 * cos, radius * 0.8 * sin];
    let ends = ([at[0] - reach[0], at[1] - reach[1]], [at[0] + reach[0], at[1] + reach[1]]);
    canvas.line(ends.0, ends.1, radius * 0.26, [0.015; 3]);
    canvas.disc([at[0] - radius * 0.4, at[1] - radius * 0.4], radius * 0.12, |_, _| [0.85; 3]);
}

/// A paper label with lines of print, some of it fine.
fn label(canvas: &mut Canvas, random: &mut ChaCha8Rng) {
    let on = Plate {
        at: place(random),
        half: [random.random_range(130.0..330.0), random.random_range(70.0..200.0)],
        turn: random.random_range(-0.4..0.4),
        round: random.random_range(0.0..16.0),
    };
    let paper = scaled([0.75, 0.70, 0.58], random.random_range(0.6..1.1));
    canvas.plate(&on, |_, _| paper);
    let size = random.random_range(11.0..26.0_f32);
    let rows = (on.half[1] * 1.6 / (size * 1.9)) as u32;
    for row in 0..rows {
        let across = -0.8 + (row as f32 + 0.5) * size * 1.9 / on.half[1];
        print(canvas, &on, [-0.85, across], size, [0.02, 0.018, 0.016], random);
    }
}

/// A cord in curves, rubber or cloth.
fn cord(canvas: &mut Canvas, random: &mut ChaCha8Rng) {
    let (start, end) = (place(random), place(random));
    let width = random.random_range(12.0..34.0_f32);
    let dark = scaled([0.12, 0.10, 0.08], random.random_range(0.15..1.5));
    let swing = random.random_range(-260.0..260.0_f32);
    let at = |t: f32| {
        let bend = (t * std::f32::consts::TAU).sin() * swing;
        [start[0] + (end[0] - start[0]) * t + bend * 0.4, start[1] + (end[1] - start[1]) * t + bend]
    };
    let layers = [
        (4.0, width + 6.0, [0.012; 3]),
        (0.0, width, dark),
        (-2.0, width * 0.18, scaled(dark, 4.0)),
    ];
    for (off, width, light) in layers {
        for step in 0..48 {
            let (a, b) = (at(step as f32 / 48.0), at((step + 1) as f32 / 48.0));
            canvas.line([a[0] + off, a[1] + off], [b[0] + off, b[1] + off], width, light);
        }
    }
}

/// A tube lying down or standing: glass, the metal inside, the mirror at its top, print and pins.
fn tube(canvas: &mut Canvas, random: &mut ChaCha8Rng) {
    let length = random.random_range(130.0..330.0_f32);
    let glass = Plate {
        at: place(random),
        half: [length, length * 0.36],
        turn: random.random_range(-1.6..1.6),
        round: length * 0.3,
    };
    canvas.plate(&glass, |x, y| {
        let rim = y * y;
        let mirror = ((-x - 0.45) * 4.0).clamp(0.0, 1.0);
        let shine = (1.0 - ((y + 0.55) / 0.07).abs()).clamp(0.0, 1.0) * 0.7;
        let body = 0.02 + 0.10 * rim + mirror * 0.35 * (1.0 - rim) + shine;
        [body, body * 0.98, body * 0.95]
    });
    let inside = Plate { half: [length * 0.42, length * 0.17], round: 3.0, ..glass };
    canvas.plate(&inside, |x, _| {
        let rib = if (x * 7.0).fract().abs() < 0.16 { 0.4 } else { 1.0 };
        scaled([0.16, 0.16, 0.17], rib)
    });
    print(canvas, &inside, [-0.6, 0.1], length * 0.1, [0.7, 0.66, 0.5], random);
    let pins: [f32; 5] = [-0.7, -0.35, 0.0, 0.35, 0.7];
    for across in pins {
        let (a, b) = (glass.point(0.98, across * 0.7), glass.point(1.18, across * 0.7));
        canvas.line(a, b, length * 0.035, [0.5, 0.48, 0.42]);
    }
}

/// A capacitor of paper or wax: a round body with its light along it, bands, print, wires.
fn capacitor(canvas: &mut Canvas, random: &mut ChaCha8Rng) {
    let length = random.random_range(90.0..240.0_f32);
    let body = Plate {
        at: place(random),
        half: [length, length * random.random_range(0.22..0.4)],
        turn: random.random_range(-1.6..1.6),
        round: 8.0,
    };
    for end in [-1.0, 1.0] {
        canvas.line(body.point(end, 0.0), body.point(end * 1.6, 0.0), 5.0, [0.4, 0.38, 0.34]);
    }
    let hues: [Light; 4] =
        [[0.5, 0.33, 0.1], [0.06, 0.05, 0.05], [0.55, 0.5, 0.42], [0.3, 0.05, 0.03]];
    let hue = hues[random.random_range(0..hues.len())];
    canvas.plate(&body, |x, y| {
        let round = (1.0 - (y + 0.3) * (y + 0.3)).max(0.12);
        let band = if (x - 0.75).abs() < 0.06 { 0.2 } else { 1.0 };
        scaled(hue, round * band)
    });
    let ink = if hue[0] > 0.2 { [0.012; 3] } else { [0.5, 0.45, 0.3] };
    print(canvas, &body, [-0.8, 0.0], length * 0.13, ink, random);
}
