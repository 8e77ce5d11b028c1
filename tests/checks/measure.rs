//! Measuring on a photo: blades beside a card, drawn with known geometry and tapped by a finger that
//! misses.
//!
//! The cases and the targets were kept before the code that they judge was written.
//!
//! What this does not do: no photo of a real plug is judged.

#[path = "measure/finger.rs"]
mod finger;
#[path = "measure/picture.rs"]
mod picture;
#[path = "measure/plug.rs"]
mod plug;
#[path = "measure/scene.rs"]
mod scene;
#[path = "measure/space.rs"]
mod space;
#[path = "measure/tally.rs"]
mod tally;

use coldchassis_core::photo::measure::{
    Above, BladeReading, CardView, Grey, Length, MeasureError, Point, Says, Spot, read_blades, snap,
};
use coldchassis_tests::seeds::{asked, on_all_threads};
use rand::SeedableRng;
use rand_chacha::ChaCha8Rng;

use finger::{MISS, Taps, taps};
use picture::{Picture, drawn};
use plug::{Answer, Plug};
use scene::{FAR, FURTHER, Lot, OTHERS, Scene, USUAL};
use tally::{INSIDE, RIGHT, Said, Tally};

/// Cases of a run; `COLDCHASSIS_MEASURED` asks for more.
const CASES: u64 = 100;

/// A photo, what was tapped in it, and what is true.
struct Case {
    scene: Scene,
    picture: Picture,
    taps: Taps,
}

impl Case {
    fn drawn(lot: Lot, seed: u64) -> Self {
        let mut random = ChaCha8Rng::seed_from_u64(seed);
        let scene = Scene::drawn(lot, &mut random);
        let picture = drawn(&scene, &mut random);
        let taps = taps(&scene, &mut random);
        Self { scene, picture, taps }
    }
}

/// What is read of a case; each tap is drawn to its edge, or left as it was.
fn read(case: &Case, draws: bool) -> Result<BladeReading, MeasureError> {
    let point = |[x, y]: [f64; 2]| Point::new(x, y);
    let card = CardView::new(case.scene.size, case.taps.corners.map(point))?;
    let grey = Grey::new(case.picture.from, case.picture.size[0], &case.picture.grey)?;
    let blades = case.taps.pins.map(|ends| match draws {
        true => snap(&grey, ends.map(point)),
        false => ends.map(|end| Spot::tapped(point(end))),
    });
    read_blades(&card, blades, Above::BLADES)
}

fn said(reading: Result<BladeReading, MeasureError>) -> Said {
    let Ok(reading) = reading else {
        return Said { answer: Answer::Open, widths: [None; 2], ratio: None };
    };
    let answer = match reading.says {
        Says::Equal => Answer::Equal,
        Says::Polarised { wider } => Answer::Polarised(wider),
        Says::CannotTell(_) => Answer::Open,
    };
    let figures = |width: Length| Some([width.millimetres, width.bound_mm]);
    let ratio = Some([reading.ratio, reading.ratio_bound]);
    Said { answer, widths: reading.widths.map(figures), ratio }
}

/// What is said of every case of a lot. `COLDCHASSIS_MEASURED_FROM` takes others of the same lot.
fn tallied(lot: Lot, says: impl Fn(&Case) -> Said + Sync) -> Tally {
    let from = asked("COLDCHASSIS_MEASURED_FROM", 0);
    let count = asked("COLDCHASSIS_MEASURED", CASES);
    let each = |tally: &mut Tally, seed: u64| {
        let case = Case::drawn(lot, from + seed);
        tally.count(from + seed, &case.scene.plug, &says(&case));
    };
    on_all_threads(count, each, Tally::add)
}

#[test]
fn blades_and_widths_meet_the_targets() {
    let tally = tallied(USUAL, |case| said(read(case, true)));
    println!("{}", tally.figures());
    assert_eq!(tally.missed(), Vec::<String>::new());
}

#[test]
fn taps_without_edges_say_less_but_nothing_wrong() {
    let tally = tallied(USUAL, |case| said(read(case, false)));
    println!("taps alone: {}", tally.figures());
    assert!(tally.right() >= RIGHT && tally.inside() >= INSIDE, "{:?}", tally.missed());
}

#[test]
fn from_further_away_less_is_said_but_nothing_wrong() {
    for lot in [FURTHER, FAR] {
        let tally = tallied(lot, |case| said(read(case, true)));
        println!("card {:?} of the photo: {}", lot.share, tally.figures());
        assert!(tally.right() >= RIGHT && tally.stated() >= INSIDE, "{}", tally.figures());
    }
}

#[test]
fn other_plugs_are_not_taken_for_blades() {
    for lot in OTHERS {
        let tally = tallied(lot, |case| said(read(case, true)));
        println!("{:?}: {}", lot.kind, tally.figures());
        let answered = tally.answered();
        assert!(answered <= 1.0 - RIGHT, "{:?}: {answered:.3} answered", lot.kind);
    }
}

/// What somebody would say who knows the truth.
fn truth(plug: &Plug) -> Said {
    let [first, second] = plug.pins.each_ref().map(|pin| pin.width);
    let widths = [first, second].map(|width| Some([width, 0.01]));
    let ratio = Some([first.max(second) / first.min(second), 0.001]);
    Said { answer: plug.answer, widths, ratio }
}

#[test]
fn the_targets_are_met_by_the_truth_and_missed_by_anything_less() {
    let missed = |says: fn(Said) -> Said| {
        let mut tally = Tally::default();
        for seed in 0..CASES {
            let mut random = ChaCha8Rng::seed_from_u64(seed);
            let plug = Scene::drawn(USUAL, &mut random).plug;
            tally.count(seed, &plug, &says(truth(&plug)));
        }
        tally.missed()
    };
    let only = |missed: Vec<String>, target: &str| {
        assert!(missed.len() == 1 && missed[0].starts_with(target), "{target}: {missed:?}");
    };
    assert_eq!(missed(|said| said), Vec::<String>::new());
    only(missed(|said| Said { answer: Answer::Open, ..said }), "answered");
    only(missed(|said| Said { answer: Answer::Equal, ..said }), "right");
    only(missed(|said| said.with_widths(|[width, bound]| [width * 1.05, bound])), "within");
    only(missed(|said| Said { ratio: Some([1.1, 0.01]), ..said }), "ratios");
    only(missed(|said| said.with_widths(|[width, _]| [width, 1000.0])), "middle");
    assert_eq!(missed(|said| Said { widths: [None; 2], ..said }).len(), 2);
}

/// The square of how far a tap is from the nearest thing that a finger aims at, px.
fn nearest(scene: &Scene, [x, y]: [f64; 2]) -> f64 {
    let ends = scene.plug.pins.iter().flat_map(|pin| pin.ends);
    let aims = scene.corners().into_iter().chain(ends.map(|end| scene.camera.sees(end)));
    aims.map(|aim| (aim[0] - x).powi(2) + (aim[1] - y).powi(2)).fold(f64::INFINITY, f64::min)
}

#[test]
fn cases_span_what_the_targets_ask_for() {
    let (mut tilt, mut low, mut high, mut equal) = (0.0_f64, f64::INFINITY, 0.0_f64, 0);
    let (mut missed, mut taps) = (0.0, 0.0);
    for seed in 0..CASES {
        let Case { scene, picture, taps: tapped } = Case::drawn(USUAL, seed);
        tilt = tilt.max(scene.tilt);
        low = low.min(scene.plug.middle[2]);
        high = high.max(scene.plug.middle[2]);
        equal += i32::from(scene.plug.answer == Answer::Equal);
        for end in tapped.corners.into_iter().chain(tapped.pins.into_iter().flatten()) {
            missed += nearest(&scene, end);
            taps += 2.0;
        }
        let Picture { from, size, grey } = picture;
        let inside = |at: [f64; 2]| {
            let shown = |axis: usize| f64::from(from[axis])..f64::from(from[axis] + size[axis]);
            shown(0).contains(&at[0]) && shown(1).contains(&at[1])
        };
        assert!(tapped.pins.into_iter().flatten().all(inside), "case {seed} shows the tips");
        assert_eq!(grey.len() as u32, size[0] * size[1]);
        let darkest = grey.iter().min().expect("there are pixels");
        let brightest = grey.iter().max().expect("there are pixels");
        assert!(brightest - darkest > 60, "case {seed} shows nothing");
    }
    assert!(tilt > 34.0 && low < 5.5 && high > 14.5, "{tilt} {low} {high}");
    assert!((35..=65).contains(&equal), "{equal} have equal blades");
    let miss = f64::sqrt(missed / taps);
    assert!((MISS * 0.9..MISS * 1.1).contains(&miss), "a finger misses by {miss} px");
}

#[test]
fn other_plugs_have_no_right_answer_but_that_it_is_open() {
    for lot in OTHERS {
        let plug = Case::drawn(lot, 0).scene.plug;
        assert_eq!(plug.answer, Answer::Open);
    }
    let width = |lot: Lot| {
        let scene = Case::drawn(lot, 0).scene;
        let [a, b] = scene.plug.pins[0].ends.map(|end| scene.camera.sees(end));
        (a[0] - b[0]).hypot(a[1] - b[1])
    };
    assert!(width(FAR) < 25.0 && width(USUAL) > 35.0, "far away it is small");
}
