//! Repairs of an inspection: what each changes, stacks of them, the picture after them, and which were chosen.

use serde_json::Value;
use uuid::Uuid;

use super::circuit::{CircuitView, picture_at};
use super::commands::found;
use super::error::Problem;
use super::grid::{GridView, Says, WorstLeft};
use super::parts_words::part_view;
use super::remedy_words::RemedyWords;
use super::repair_views::{
    RemediesView, RemedyAfter, RemedyView, RepairView, StackView, StandingView, StepView,
};
use super::session::Workbench;
use super::views::InspectionView;
use crate::arrangement::all;
use crate::fields::FieldError;
use crate::inspection::{Findings, Possible, Verdict};
use crate::remedy::{
    Appetite, Bench, Chosen, Modification, Offer, Setup, Stack, Standing, cost_of, follow,
    not_a_stack, offers, parts_list, study,
};
use crate::store::Change;
use crate::words::{Message, Words, milliamperes};

/// The key under which the stack that was chosen is kept.
pub(super) const CHOSEN: &str = "remedies";

/// An inspection with all that its repairs depend on.
pub(super) struct Case {
    pub(super) findings: Findings,
    pub(super) verdict: Verdict,
    pub(super) setup: Setup,
    pub(super) chosen: Chosen,
}

impl Workbench {
    /// What each repair would change, and the shortest way to two faults.
    ///
    /// # Errors
    /// There is no such inspection, or the record cannot be read.
    pub fn remedies(&mut self, inspection: Uuid) -> Result<RemediesView, Problem> {
        let case = self.case(inspection)?;
        let study = study(&case.setup, &mut self.repairs);
        let say = RepairWords::new(&self.words, &case.setup);
        let in_shortest = |one| study.shortest.as_ref().is_some_and(|s| s.steps.contains(&one));
        let remedies = study.offers.iter().map(|offer| {
            let is_chosen = case.chosen.stack.contains(&offer.modification);
            say.remedy(offer, &case.setup, in_shortest(offer.modification), is_chosen)
        });
        let over = Message::new("remedies-over").text("count", case.setup.set.len().to_string());
        let id = |id: &&str| self.words.say_id(id);
        Ok(RemediesView {
            cautions: CAUTIONS.iter().map(id).collect(),
            last: LAST.iter().map(id).collect(),
            over: self.words.say(&over),
            before: say.standing(&study.before),
            remedies: remedies.collect(),
            no_way: study.shortest.is_none().then(|| self.words.say_id("stack-no-way")),
            shortest: study.shortest.as_ref().map(|stack| say.stack(stack)),
            in_unit: study.in_unit.as_ref().map(|stack| say.stack(stack)),
            chosen: case.chosen.stack,
            limit_ma: case.chosen.limit_ma,
        })
    }

    /// A stack of repairs before and after, with the grid of both and what has to be bought.
    ///
    /// # Errors
    /// There is no such inspection, a step is not known or not offered there, or the record cannot be read.
    pub fn remedy_stack(&mut self, inspection: Uuid, stack: Value) -> Result<RepairView, Problem> {
        let case = self.case(inspection)?;
        let asked = Chosen::read(stack)?;
        let setup = case.setup.clone().sized(asked.limit_ma);
        let after = after_all(&setup, &asked.stack)?;
        let repaired = after.last().unwrap_or(&setup);
        let before = self.repairs.stand(&setup);
        let stands: Vec<Standing> = after.iter().map(|one| self.repairs.stand(one)).collect();
        let standing = stands.last().unwrap_or(&before).clone();
        let next = offers(repaired, &standing, &mut self.repairs);
        let stacked = follow(&setup, &asked.stack, &mut self.repairs);
        let stacked = stacked.ok_or_else(|| Problem::from(not_a_stack()))?;
        let grid_before = self.grid_of(&case, &setup, &before);
        let grid_after = self.grid_of(&case, repaired, &standing);
        let say = RepairWords::new(&self.words, &setup);
        let appetite = Appetite::of(&case.findings);
        let parts = parts_list(&setup, &asked.stack, &appetite, asked.limit_ma);
        let steps = asked.stack.iter().zip(&stands).enumerate();
        let steps = steps.map(|(place, (step, stand))| say.step(*step, stand, &stacked, place));
        let is_chosen = |one: &Modification| asked.stack.contains(one);
        let remedies = next
            .iter()
            .map(|offer| say.remedy(offer, repaired, false, is_chosen(&offer.modification)));
        Ok(RepairView {
            stack: say.stack(&stacked),
            before: say.standing(&before),
            after: RepairWords::new(&self.words, repaired).standing(&standing),
            steps: steps.collect(),
            grid_before,
            grid_after,
            remedies: remedies.collect(),
            parts: parts.iter().map(|need| part_view(need, &self.words)).collect(),
            chosen: asked == case.chosen,
        })
    }

    /// The circuit picture after a stack of repairs, of the arrangement that is then the worst.
    ///
    /// # Errors
    /// As for [`Workbench::remedy_stack`] and [`Workbench::circuit`].
    pub fn circuit_repaired(
        &mut self,
        inspection: Uuid,
        stack: Value,
        at: Value,
    ) -> Result<Option<CircuitView>, Problem> {
        let case = self.case(inspection)?;
        let asked = Chosen::read(stack)?;
        let setup = case.setup.clone().sized(asked.limit_ma);
        let after = after_all(&setup, &asked.stack)?;
        let repaired = after.last().unwrap_or(&setup);
        let standing = self.repairs.stand(repaired);
        let Some(left) = left_of(&case, repaired, &standing, &mut self.repairs) else {
            return Ok(None);
        };
        picture_at(&left, self.repairs.judge_of(repaired), &self.words, at)
    }

    /// Keeps the stack of repairs that was chosen; an empty one takes the choice back.
    ///
    /// # Errors
    /// A step is not known or not offered there; what was chosen before stays.
    pub fn choose_remedies(
        &mut self,
        inspection: Uuid,
        stack: Value,
    ) -> Result<InspectionView, Problem> {
        let case = self.case(inspection)?;
        let asked = Chosen::read(stack)?;
        let setup = case.setup.sized(asked.limit_ma);
        after_all(&setup, &asked.stack)?;
        let kept = self.store.findings(inspection)?.into_iter().any(|kept| kept.key == CHOSEN);
        if !asked.stack.is_empty() {
            return self.set(inspection, found(CHOSEN, asked.kept()));
        }
        if kept {
            let subject = format!("finding.{CHOSEN}");
            return self.set(inspection, Change::Withdrawn { subject });
        }
        self.inspection(inspection)
    }

    /// Why the repair that was chosen does not fit what has been found since; nothing where it does, or none was.
    pub(super) fn unfit(&mut self, inspection: Uuid) -> Result<Option<Message>, Problem> {
        let case = self.case(inspection)?;
        let after = case.setup.after_all(&case.chosen.stack);
        Ok(after.err().map(|(_, refusal)| Message::new(format!("refusal-{}", refusal.id()))))
    }

    /// An inspection with all that its repairs depend on.
    pub(super) fn case(&mut self, inspection: Uuid) -> Result<Case, Problem> {
        let (found, unit) = self.find(inspection)?;
        let findings = self.read(&found, &unit)?;
        let verdict = self.verdict_on(&findings);
        let kept = self.store.findings(inspection)?.into_iter().find(|kept| kept.key == CHOSEN);
        let chosen = kept.map_or(Ok(Chosen::none()), |kept| Chosen::read(kept.value))?;
        let setup = Setup::of(&findings, &Possible::after(&findings)).sized(chosen.limit_ma);
        Ok(Case { findings, verdict, setup, chosen })
    }

    fn grid_of(&mut self, case: &Case, setup: &Setup, standing: &Standing) -> GridView {
        match left_of(case, setup, standing, &mut self.repairs) {
            None => GridView::of_no_line(&self.words),
            Some(left) => {
                let WorstLeft { findings, verdict, arrangement, grid } = &left;
                Says { findings, verdict, arrangement, words: &self.words }.view(grid)
            }
        }
    }
}

/// The setups after each step of a stack.
pub(super) fn after_all(setup: &Setup, stack: &[Modification]) -> Result<Vec<Setup>, Problem> {
    setup.after_all(stack).map_err(|(place, refusal)| {
        let why = Message::new(format!("refusal-{}", refusal.id()));
        let message = Message::new("takes-offered-step").message("why", why);
        FieldError::new(format!("stack.{place}"), message).into()
    })
}

/// The arrangement that a standing is of with its grid, as the grid and the picture of an inspection take it.
fn left_of(
    case: &Case,
    setup: &Setup,
    standing: &Standing,
    bench: &mut Bench,
) -> Option<WorstLeft> {
    let arrangement = all().get(usize::from(standing.of?.0)).filter(|a| a.line.is_some())?;
    let grid = bench.grid(setup, standing)?;
    let findings = Findings { supply: setup.supply, ..case.findings.clone() };
    let verdict = Verdict {
        treat_as: standing.class,
        worst: standing.worst,
        worst_of: standing.of,
        consistent: if case.verdict.conflicts.is_empty() { setup.set.len() } else { 0 },
        ..case.verdict.clone()
    };
    Some(WorstLeft { findings, verdict, arrangement, grid })
}

/// What stands at the head of every repair, and at its end.
const CAUTIONS: [&str; 3] = ["repair-caution-codes", "repair-caution-who", "repair-caution-unplug"];
const LAST: [&str; 2] = ["repair-caution-when-not", "repair-caution-original"];

/// Puts repairs into views.
pub(super) struct RepairWords<'a> {
    say: RemedyWords<'a>,
}

impl<'a> RepairWords<'a> {
    pub(super) const fn new(words: &'a Words, setup: &Setup) -> Self {
        Self { say: RemedyWords { words, feed: setup.supply.feed } }
    }

    pub(super) fn standing(&self, standing: &Standing) -> StandingView {
        let class = standing.class;
        StandingView {
            class,
            label: self.say.words.say(&Message::new(format!("class-{}", class.id()))),
            signal: class.signal(),
            margin: standing.worst.margin,
            worst_ma: standing.worst_ma(),
            worst: self.say.words.write(&milliamperes(standing.worst_ma())),
            as_found_ma: standing.as_found_ma,
            as_found: self.say.words.write(&milliamperes(standing.as_found_ma)),
            state: standing.worst.state,
            faults: standing.worst.faults.faults().collect(),
            remaining: self.say.faults(standing),
            line_on_earth: standing.line_on_earth,
            sentences: self.say.sentences(standing),
            line: self.say.line(standing),
        }
    }

    fn stack(&self, stack: &Stack) -> StackView {
        StackView {
            steps: stack.steps.clone(),
            line: self.say.stack(stack),
            worse: self.say.worse(stack),
            minutes: stack.minutes,
            price: stack.price,
        }
    }

    fn step(&self, step: Modification, stand: &Standing, stack: &Stack, place: usize) -> StepView {
        let alone = Stack { steps: vec![step], worse: vec![0], ..stack.clone() };
        let worse = stack.worse.contains(&place);
        StepView {
            id: step,
            name: self.say.name(step),
            after: self.standing(stand),
            worse: worse.then(|| self.say.worse(&alone)).and_then(|all| all.into_iter().next()),
        }
    }

    fn remedy(&self, offer: &Offer, setup: &Setup, in_shortest: bool, chosen: bool) -> RemedyView {
        let one = offer.modification;
        let offered = offer.result.as_ref().ok();
        let refusal = offer.result.as_ref().err().copied();
        RemedyView {
            id: one,
            name: self.say.name(one),
            does: self.say.does(one),
            does_not: self.say.does_not(one),
            cost: self.say.cost(one),
            cautions: self.cautions(one, setup),
            after: offered.map(|offered| RemedyAfter {
                standing: self.standing(&offered.over),
                of_worst: offered.worst.as_ref().map(|worst| self.standing(worst)),
                worse: offered.is_worse,
                changes: offered.changes,
            }),
            refusal,
            refused: refusal.map(|refusal| self.say.refusal(refusal)),
            in_shortest,
            chosen,
        }
    }

    fn cautions(&self, one: Modification, setup: &Setup) -> Vec<String> {
        let costs_nothing = cost_of(one).price == 0.0;
        let is_plug = matches!(one, Modification::PolarisedPlug | Modification::ThreeWireCord);
        let is_cord = is_plug || one == Modification::IsolatingTransformerInside;
        [
            (is_plug, "remedy-caution-reversible"),
            (is_cord && setup.resistance_cord, "remedy-caution-resistance_cord"),
            (costs_nothing && one.is_of_unit(), "remedy-caution-insulate"),
        ]
        .into_iter()
        .filter(|(holds, _)| *holds)
        .map(|(_, id)| self.say.words.say_id(id))
        .collect()
    }
}
