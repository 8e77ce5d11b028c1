//! What workers said that they did, and what of it the record has to hold.

use std::collections::{BTreeMap, BTreeSet};

use coldchassis_core::workbench::Workbench;
use coldchassis_tests::killing::{Said, Stage};
use serde_json::{Value, json};
use uuid::Uuid;

use super::child::Aim;
use super::log::Found;
use super::supplies::{Bundle, Supplies};
use super::tally::Tally;

/// Views that are looked at again after a kill: each takes a verdict.
const VIEWS: usize = 3;

/// What was under way when a worker was killed.
struct Under {
    stage: Stage,
    unit: Option<Uuid>,
    /// The ids that it had drawn.
    ids: Vec<String>,
    /// Of the bundle that it took in.
    number: u32,
}

/// How a bundle's units stand.
#[derive(Clone, Copy, PartialEq, Eq)]
enum Standing {
    Absent,
    Here,
    Gone,
}

/// A view as it was acknowledged, and as it is after the next start.
struct View {
    unit: String,
    inspection: Uuid,
    said: Value,
    found: Option<Value>,
}

/// All that is known of one folder.
pub struct Ledger<'a> {
    supplies: &'a Supplies,
    bundles: Vec<Standing>,
    /// The events at the last look, each with its unit.
    pub before: BTreeMap<String, String>,
    /// Every event that was ever found.
    pub ever: BTreeSet<String>,
    /// The numbers of the copies that were looked at.
    pub copies: BTreeSet<u32>,
    /// Since the last look: ids that were drawn by what was acknowledged, with the unit that it was about.
    acknowledged: BTreeMap<String, Option<String>>,
    /// Since the last look: what was acknowledged, and the bundle of its worker.
    done: Vec<(Stage, u32)>,
    under: Vec<Under>,
    views: Vec<View>,
}

impl<'a> Ledger<'a> {
    pub fn of(supplies: &'a Supplies, events: &BTreeMap<String, String>) -> Self {
        let here = |bundle: &Bundle| {
            let is_here = bundle.events.iter().all(|id| events.contains_key(id));
            if is_here { Standing::Here } else { Standing::Absent }
        };
        Self {
            supplies,
            bundles: supplies.bundles.iter().map(here).collect(),
            before: events.clone(),
            ever: events.keys().cloned().collect(),
            copies: BTreeSet::new(),
            acknowledged: BTreeMap::new(),
            done: Vec::new(),
            under: Vec::new(),
            views: Vec::new(),
        }
    }

    /// The next bundle for a stage: one that is not here, or one whose units can be deleted.
    pub fn next_bundle(&self, stage: Stage) -> u32 {
        let wanted = if stage == Stage::Delete { Standing::Here } else { Standing::Absent };
        let next = self.bundles.iter().position(|standing| *standing == wanted);
        u32::try_from(next.expect("there are bundles enough")).expect("a few")
    }

    /// Takes note of what a worker said. Gives what was under way at its end.
    pub fn hear(&mut self, said: &[Said], aim: Aim) -> Option<Stage> {
        let (mut under, mut drawn) = (None, Vec::new());
        for line in said {
            match line {
                Said::Begins(stage, unit) => {
                    drawn.clear();
                    under = Some((*stage, *unit));
                }
                Said::Drew(id) => drawn.push(id.to_string()),
                Said::Did(stage, _, view) => {
                    let unit = under.take().and_then(|(_, unit)| unit);
                    let unit = unit.map(|unit| unit.to_string());
                    self.acknowledged.extend(drawn.drain(..).map(|id| (id, unit.clone())));
                    self.done.push((*stage, aim.number));
                    self.remember(*stage, view);
                }
            }
        }
        let (stage, unit) = under?;
        self.forget_if_all_may_change(stage);
        self.under.push(Under { stage, unit, ids: drawn, number: aim.number });
        Some(stage)
    }

    fn remember(&mut self, stage: Stage, view: &Value) {
        self.forget_if_all_may_change(stage);
        let (Some(unit), Some(inspection)) = (view["unit"]["id"].as_str(), view["id"].as_str())
        else {
            return;
        };
        self.views.retain(|view| view.unit != unit);
        self.views.push(View {
            unit: unit.to_owned(),
            inspection: inspection.parse().expect("an id"),
            said: view.clone(),
            found: None,
        });
    }

    /// A bundle may give other units other numbers, and of an older copy verdicts are worked out anew.
    fn forget_if_all_may_change(&mut self, stage: Stage) {
        if matches!(stage, Stage::Import | Stage::Delete | Stage::Restore | Stage::Migrate) {
            self.views.clear();
        }
    }

    /// Whether workers did or were doing that since the last look.
    pub fn was_about(&self, stage: Stage) -> bool {
        self.is_under(stage) || self.done.iter().any(|(done, _)| *done == stage)
    }

    /// Whether a worker was in the middle of that when it was killed since the last look.
    pub fn is_under(&self, stage: Stage) -> bool {
        self.under.iter().any(|under| under.stage == stage)
    }

    /// Looks at inspections as they are shown after the start.
    pub fn see(&mut self, bench: &mut Workbench) {
        let first = self.views.len().saturating_sub(VIEWS);
        for view in self.views.iter_mut().skip(first) {
            let found = bench.inspection(view.inspection).expect("an inspection that was shown");
            view.found = Some(json!(found));
        }
        let units: Vec<Uuid> = self.under.iter().filter_map(|under| under.unit).collect();
        for line in bench.units(None).expect("the record") {
            if !units.contains(&line.id) {
                continue;
            }
            // The verdict is kept after the answer: one that was not kept may not be said to be another.
            let Some((inspection, class)) = line.inspection.zip(line.treat_as) else { continue };
            let view = bench.inspection(inspection).expect("an inspection");
            assert_eq!(class, view.verdict.treat_as, "the list says another class of {}", line.id);
        }
    }

    /// Holds what was said against the log.
    pub fn check(&mut self, found: &Found, tally: &mut Tally) {
        self.check_bundles(found, tally);
        let is_deleted = |unit: &String| self.deleted().any(|bundle| bundle.units.contains(unit));
        let mut allowed: BTreeSet<&String> = self.acknowledged.keys().collect();
        for (id, unit) in &self.acknowledged {
            let is_gone = unit.as_ref().is_some_and(is_deleted);
            assert!(is_gone || found.named.contains(id), "{id} was acknowledged and is not there");
        }
        tally.count("ids of acknowledged commands found in the log", self.acknowledged.len());
        let mut landed = BTreeSet::new();
        for under in &self.under {
            let there = under.ids.iter().filter(|id| found.named.contains(*id)).count();
            let is_whole = there == under.ids.len();
            assert!(there == 0 || is_whole, "{there} of {:?} of {:?}", under.ids, under.stage);
            if there > 0 {
                allowed.extend(&under.ids);
                landed.extend(under.unit.map(|unit| unit.to_string()));
            }
            let has_events = matches!(
                under.stage,
                Stage::Create | Stage::Answer | Stage::Undo | Stage::Edit | Stage::Photo
            );
            if has_events {
                let row = tally.row(under.stage);
                *(if there > 0 { &mut row.whole } else { &mut row.absent }) += 1;
            }
        }
        for id in found.events.keys().filter(|id| !self.before.contains_key(*id)) {
            let is_of_bundle =
                |bundle: &Bundle| bundle.events.contains(id) || bundle.tombstones.contains(id);
            let is_known = allowed.contains(id) || self.supplies.bundles.iter().any(is_of_bundle);
            assert!(is_known, "{id} came from nowhere");
        }
        for (id, unit) in &self.before {
            assert!(
                found.events.contains_key(id) || is_deleted(unit),
                "{id} was there and is lost"
            );
        }
        tally.count("events found again", self.before.len());
        for view in &self.views {
            if let Some(found) = view.found.as_ref().filter(|_| !landed.contains(&view.unit)) {
                assert_eq!(*found, view.said, "another view of {}", view.inspection);
                tally.count("views found as they were acknowledged", 1);
            }
        }
    }

    /// Every bundle is here whole or not at all, and every deletion was done whole or not at all.
    fn check_bundles(&mut self, found: &Found, tally: &mut Tally) {
        let there =
            |ids: &BTreeSet<String>| ids.iter().filter(|id| found.events.contains_key(*id)).count();
        for (number, bundle) in (0..).zip(&self.supplies.bundles) {
            let (events, tombstones) = (there(&bundle.events), there(&bundle.tombstones));
            let is_other = |(id, unit): &(&String, &String)| {
                bundle.units.contains(*unit) && !bundle.tombstones.contains(*id)
            };
            let others = found.events.iter().filter(is_other).count();
            let now = match (events, tombstones) {
                (0, 0) => Standing::Absent,
                (0, dead) if dead == bundle.tombstones.len() && others == 0 => Standing::Gone,
                (all, 0) if all == bundle.events.len() => Standing::Here,
                part => panic!("{part:?} events and tombstones of bundle {number}"),
            };
            let standing = self.bundles.get_mut(number as usize).expect("a bundle");
            let acknowledged = |stage| self.done.contains(&(stage, number));
            let may = |stage| {
                let is_it = |under: &Under| (under.stage, under.number) == (stage, number);
                acknowledged(stage) || self.under.iter().any(is_it)
            };
            match (*standing, now) {
                (Standing::Absent, Standing::Absent) => assert!(!acknowledged(Stage::Import)),
                (Standing::Here, Standing::Here) => assert!(!acknowledged(Stage::Delete)),
                (Standing::Gone, Standing::Gone) => {}
                (Standing::Absent, Standing::Here) => assert!(may(Stage::Import)),
                (Standing::Here, Standing::Gone) => assert!(may(Stage::Delete)),
                _ => panic!("bundle {number} changed by itself"),
            }
            for under in self.under.iter().filter(|under| under.number == number) {
                if matches!(under.stage, Stage::Import | Stage::Delete) {
                    let row = tally.row(under.stage);
                    *(if *standing == now { &mut row.absent } else { &mut row.whole }) += 1;
                }
            }
            *standing = now;
        }
    }

    /// The bundles whose units were deleted, now or before.
    pub fn deleted(&self) -> impl Iterator<Item = &'a Bundle> {
        let is_gone = |(_, standing): &(&Bundle, &Standing)| **standing == Standing::Gone;
        let all: &'a Supplies = self.supplies;
        all.bundles.iter().zip(&self.bundles).filter(is_gone).map(|(bundle, _)| bundle)
    }

    /// Goes on from what was found.
    pub fn turn_over(&mut self, found: Found) {
        self.ever.extend(found.events.keys().cloned());
        self.before = found.events;
        self.acknowledged.clear();
        self.done.clear();
        self.under.clear();
        self.views.clear();
    }
}
