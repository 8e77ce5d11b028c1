//! Works on a record until it is killed, and says what it does: `worker HOME GIVEN SEED STAGE NUMBER`.
//!
//! It comes to the stage after little else, or comes back to it over and over where it is a small one. The
//! number is that of the bundle to be taken in.

use std::fs;
use std::path::PathBuf;
use std::time::{Instant, SystemTime, UNIX_EPOCH};

use coldchassis_core::photo::ingest;
use coldchassis_core::workbench::{
    DEMO_UNIT, InspectionView, NewUnit, Problem, Surroundings, Workbench, look_at_bundle,
};
use coldchassis_tests::killing::{Given, Home, PICTURES, Said, Stage, snapshot_name};
use rand::seq::IndexedRandom;
use rand::{Rng, SeedableRng};
use rand_chacha::ChaCha8Rng;
use serde::Serialize;
use serde_json::{Value, json};
use uuid::Uuid;

/// Small things that are done after the stage at most: it is killed long before.
const MOST: usize = 60;
/// The small stages, the more usual ones more than once.
const SMALL: [Stage; 9] = [
    Stage::Answer,
    Stage::Answer,
    Stage::Answer,
    Stage::Answer,
    Stage::Create,
    Stage::Undo,
    Stage::Edit,
    Stage::Photo,
    Stage::Photo,
];
/// Answers beside those of the demonstration, so that one replaces another.
const OTHERS: [(&str, &str); 5] = [
    ("plug", "\"two_equal_blades\""),
    ("cord", "\"sound\""),
    ("bare_metal", "[\"none_anywhere\"]"),
    ("selector", "\"present\""),
    ("fuse", "\"cant_tell\""),
];

fn main() {
    let given: Vec<String> = std::env::args().skip(1).collect();
    let [home, supplies, seed, stage, number] = given.as_slice() else {
        panic!("worker HOME GIVEN SEED STAGE NUMBER");
    };
    let stage = Stage::of(stage).expect("a stage");
    let draw = ChaCha8Rng::seed_from_u64(seed.parse().expect("a number"));
    let opening = if stage == Stage::Migrate { Stage::Migrate } else { Stage::Open };
    let home = Home(PathBuf::from(home));
    let bench =
        say(opening, None, || Workbench::open(&home.record(), around(&home)), |_| json!(null));
    let mut worker =
        Worker { bench, draw, home, given: Given(supplies.into()), places: Vec::new() };
    worker.look_around();
    if SMALL.contains(&stage) {
        worker.busy(MOST, stage);
        return;
    }
    let before = worker.draw.random_range(0..3);
    worker.busy(before, Stage::Answer);
    worker.long(stage, number.parse().expect("a number"));
    worker.busy(MOST, Stage::Answer);
}

fn around(home: &Home) -> Surroundings {
    Surroundings {
        clock: Box::new(|| {
            let since = SystemTime::now().duration_since(UNIX_EPOCH).expect("after 1970");
            i64::try_from(since.as_millis()).expect("before the year 9999")
        }),
        ids: Box::new(|| {
            let id = Uuid::now_v7();
            Said::Drew(id).out_loud();
            id
        }),
        device: "bench".to_owned(),
        photos: Some(home.photos()),
        author: "Odo Trinket".to_owned(),
        locale: "en".to_owned(),
    }
}

/// Does something and says so before and after.
fn say<T>(
    stage: Stage,
    unit: Option<Uuid>,
    work: impl FnOnce() -> Result<T, Problem>,
    show: impl FnOnce(&T) -> Value,
) -> T {
    Said::Begins(stage, unit).out_loud();
    let began = Instant::now();
    let done = work().unwrap_or_else(|problem| panic!("{stage:?}: {problem:?}"));
    let micros = u64::try_from(began.elapsed().as_micros()).expect("a short while");
    Said::Did(stage, micros, show(&done)).out_loud();
    done
}

struct Worker {
    bench: Workbench,
    draw: ChaCha8Rng,
    home: Home,
    given: Given,
    /// Units with their last inspection.
    places: Vec<(Uuid, Uuid)>,
}

impl Worker {
    fn does<T: Serialize>(
        &mut self,
        stage: Stage,
        unit: Option<Uuid>,
        work: impl FnOnce(&mut Workbench) -> Result<T, Problem>,
    ) -> T {
        say(stage, unit, || work(&mut self.bench), |done| json!(done))
    }

    fn look_around(&mut self) {
        let units = self.bench.units(None).expect("the record");
        let place =
            |unit: &coldchassis_core::workbench::UnitView| Some((unit.id, unit.inspection?));
        self.places = units.iter().filter_map(place).collect();
    }

    /// Does small things, every other one of a stage.
    fn busy(&mut self, times: usize, stage: Stage) {
        for _ in 0..times {
            let other = *SMALL.choose(&mut self.draw).expect("a list");
            let next = if self.draw.random() { stage } else { other };
            self.small(next);
        }
    }

    fn small(&mut self, stage: Stage) {
        let Some(&(unit, inspection)) = self.places.choose(&mut self.draw) else {
            return self.create();
        };
        match stage {
            Stage::Answer => self.answer(unit, inspection),
            Stage::Undo => {
                self.does(stage, Some(unit), |bench| bench.undo(inspection));
            }
            Stage::Photo => self.photograph(unit, inspection),
            Stage::Edit => self.edit(unit, inspection),
            _ => self.create(),
        }
    }

    fn create(&mut self) {
        let name = format!("Invented set {}", self.draw.random_range(0..10_000));
        let new = NewUnit {
            name,
            place: "Bench one".to_owned(),
            kind: self.draw.random::<bool>().then(|| "table_radio".to_owned()),
            supply: json!({"volts": 120.0, "hertz": 60.0}),
            access: vec!["outside".to_owned(), "cover_off".to_owned()],
        };
        let made = self.does(Stage::Create, None, |bench| bench.create_unit(&new));
        self.places.push((made.unit.id, made.id));
    }

    fn answer(&mut self, unit: Uuid, inspection: Uuid) {
        let demo = DEMO_UNIT.answers.iter().map(|says| (says.question, says.answer));
        let all: Vec<_> = demo.filter(|(id, _)| !id.contains('.')).chain(OTHERS).collect();
        let (question, answer) = *all.choose(&mut self.draw).expect("a list");
        let answer: Value = serde_json::from_str(answer).expect("an answer");
        self.does(Stage::Answer, Some(unit), |bench| bench.answer(inspection, question, answer));
    }

    /// Pixels are worked on before it begins, as in the app: nothing is written by then.
    fn photograph(&mut self, unit: Uuid, inspection: Uuid) {
        let picture = self.given.picture(self.draw.random_range(0..PICTURES));
        let photo = ingest(&fs::read(picture).expect("a picture")).expect("a picture");
        let of = [None, Some("answers.plug"), Some("answers.cord")];
        let of = *of.choose(&mut self.draw).expect("a list");
        self.does(Stage::Photo, Some(unit), |bench| bench.keep_photo(inspection, of, &photo));
    }

    fn edit(&mut self, unit: Uuid, inspection: Uuid) {
        let view = self.bench.inspection(inspection).expect("an inspection");
        let photo = view.photos.choose(&mut self.draw).map(|photo| photo.id);
        let text = format!("Words {}", self.draw.random_range(0..10_000));
        let which = self.draw.random_range(0..5);
        let edit = |bench: &mut Workbench| -> Result<InspectionView, Problem> {
            match (which, photo) {
                (0, Some(photo)) => bench.caption_photo(inspection, photo, &text),
                (1, Some(photo)) => bench.remove_photo(inspection, photo),
                (2, _) => bench.start_inspection(unit, &["outside".to_owned()]),
                (3, _) => bench.set_place(inspection, &text),
                _ => bench.rename(inspection, &text),
            }
        };
        self.does(Stage::Edit, Some(unit), edit);
    }

    fn long(&mut self, stage: Stage, number: u32) {
        let (arriving, deleting) = (self.given.bundle(number), self.given.deleting(number));
        match stage {
            Stage::Look | Stage::Import => {
                let files = self.bench.photo_files().expect("a folder of photos");
                let look = || look_at_bundle(&arriving, &files);
                let work = say(Stage::Look, None, look, |_| json!(null));
                self.does(Stage::Import, None, |bench| bench.keep_bundle(work));
            }
            Stage::Delete => {
                self.does(stage, None, |bench| {
                    let work = look_at_bundle(&deleting, &bench.photo_files()?)?;
                    bench.keep_bundle(work)
                });
            }
            Stage::Snapshot => {
                self.make_a_copy_due();
                self.does(stage, None, |bench| {
                    bench.snapshot_work()?.expect("a copy is due").run()
                });
            }
            Stage::Export => {
                let to = self.home.bundle();
                self.does(stage, None, |bench| bench.export_work(None)?.run(&to));
            }
            Stage::Restore => {
                let recovery = self.bench.recovery().expect("a record in a file");
                let newest = recovery.snapshots().expect("copies").first().map(|one| one.number);
                self.does(stage, None, |bench| bench.restore(newest, true));
            }
            _ => {}
        }
        self.look_around();
    }

    /// One is due when twenty inspections more were begun than stand in the name of the newest: that
    /// number becomes none.
    fn make_a_copy_due(&self) {
        let Ok(entries) = fs::read_dir(self.home.snapshots()) else { return };
        for entry in entries {
            let path = entry.expect("an entry").path();
            if let Some((number, after)) = snapshot_name(&path) {
                let other = path.with_file_name(format!("{number:06}-0{after}"));
                fs::rename(&path, other).expect("another name");
            }
        }
    }
}
