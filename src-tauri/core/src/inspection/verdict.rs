//! The verdict: treat as, could be, likely, what it rests on, and what to ask next.

use crate::arrangement::ArrangementId;
use crate::fields::id_enum;
use crate::hazard::{Class, Worst};

use super::bank::Access;
use super::conflict::Possible;
use super::decide::{self, Beliefs, Foreseen, Next, Order, Step};
use super::doubt::Doubt;
use super::findings::{Finding, Findings};
use super::judge::Judge;
use super::overlay::{Overlay, OverlayId, overlays};

id_enum! {
    /// Whether the class is shown, or only not ruled out.
    pub enum Basis {
        /// Treat as and could be agree.
        Shown = "shown",
        /// They do not, or the findings contradict each other.
        NotRuledOut = "not_ruled_out",
    }
}

/// A share from which a class is called likely.
const LIKELY: f64 = 0.7;

/// The class that soft evidence points to; never the verdict.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Likely {
    /// The class.
    pub class: Class,
    /// Its share, 0.7 to 1.
    pub share: f64,
}

/// A finding that carries the verdict.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct RestsOn {
    /// The finding.
    pub finding: Finding,
    /// What treat as would be without it.
    pub without: Class,
}

/// What treat as could become with more access.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Further {
    /// The access that it takes besides what is given; none where figures read off are to be measured.
    pub access: Vec<Access>,
    /// The best that treat as could become.
    pub best: Class,
}

/// What can be said after the findings.
#[derive(Clone, Debug, PartialEq)]
pub struct Verdict {
    /// The worst class still consistent: what to act on.
    pub treat_as: Class,
    /// The best class still consistent.
    pub could_be: Class,
    /// Whether they agree.
    pub basis: Basis,
    /// What soft evidence points to.
    pub likely: Option<Likely>,
    /// The worst case of the worst arrangement.
    pub worst: Worst,
    /// The arrangement that the worst case is of; nothing where nothing is possible.
    pub worst_of: Option<ArrangementId>,
    /// The largest current with no fault, over what is possible, mA rms; only where it leaks.
    pub as_found_ma: Option<f64>,
    /// What speaks against the class though no finding does.
    pub doubts: Vec<Doubt>,
    /// What to ask next; nothing when treat as can no longer improve.
    pub next: Option<Next>,
    /// What more access could still show; only where nothing is left to ask at this one.
    pub further: Vec<Further>,
    /// The minimal sets of findings that contradict each other.
    pub conflicts: Vec<Vec<Finding>>,
    /// The findings whose withdrawal would worsen treat as.
    pub rests_on: Vec<RestsOn>,
    /// The cautions beside the class.
    pub overlays: Vec<Overlay>,
    /// How many arrangements agree with every finding.
    pub consistent: usize,
    /// The classes still possible, worst first.
    pub classes: Vec<Class>,
    /// Tubes of the list of whose heater neither a list nor a rule says anything.
    pub unknown_tubes: Vec<String>,
}

impl Verdict {
    /// The basis in words: a class is not called shown while something speaks against it.
    pub fn basis_in_words(&self) -> Basis {
        if !self.doubts.is_empty() { Basis::NotRuledOut } else { self.basis }
    }
}

/// Judges the findings.
pub fn assess(findings: &Findings, judge: &mut Judge) -> Verdict {
    assess_by(findings, judge, &Beliefs::of(findings), Order::Engine)
}

/// Judges the findings of the next turn of an inspection, with what was worked out at the last one: the same verdict, sooner.
pub fn assess_next(findings: &Findings, judge: &mut Judge, foreseen: &mut Foreseen) -> Verdict {
    verdict(findings, judge, &Beliefs::of(findings), Order::Engine, foreseen)
}

/// Judges the findings with other beliefs or another order of asking, which bear on what is likely and on
/// what to ask next alone.
pub fn assess_by(
    findings: &Findings,
    judge: &mut Judge,
    beliefs: &Beliefs,
    order: Order,
) -> Verdict {
    verdict(findings, judge, beliefs, order, &mut Foreseen::default())
}

fn verdict(
    findings: &Findings,
    judge: &mut Judge,
    beliefs: &Beliefs,
    order: Order,
    foreseen: &mut Foreseen,
) -> Verdict {
    judge.turn_to(findings);
    let possible = Possible::after(findings);
    let set = &possible.considered;
    let treat_as = judge.worst_over(set);
    let could_be = judge.best_over(set);
    let doubts = Doubt::about(findings, &possible, judge, treat_as);
    let agree = treat_as == could_be && !possible.is_conflict();
    let (likely, classes) = likely(beliefs.weights(), &possible, judge, could_be);
    let range = (treat_as, could_be);
    let next = decide::next(findings, &possible, judge, range, beliefs, order, foreseen)
        .or_else(|| decide::clearing(findings, &doubts));
    let further = match next {
        None if treat_as != could_be || decide::is_untraced(findings) => {
            further(findings, &possible, judge, beliefs)
        }
        _ => Vec::new(),
    };
    let (worst_of, worst) = judge
        .worst_case(set, treat_as)
        .map_or((None, Worst::NO_LINE), |(id, worst)| (Some(id), worst));
    Verdict {
        treat_as,
        could_be,
        basis: if agree { Basis::Shown } else { Basis::NotRuledOut },
        likely,
        worst,
        worst_of,
        as_found_ma: (treat_as == Class::Leaky).then(|| judge.leak_over(set, treat_as)),
        doubts,
        next,
        further,
        rests_on: rests_on(findings, judge, treat_as),
        overlays: overlays(findings, set, judge),
        consistent: possible.consistent(),
        classes,
        unknown_tubes: findings.heaters().map(|heaters| heaters.unknown()).unwrap_or_default(),
        conflicts: possible.conflicts,
    }
}

/// What a list of units shows of a verdict.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Brief {
    /// The worst class still consistent: what to act on.
    pub treat_as: Class,
    /// Whether it is called shown, as [`Verdict::basis_in_words`].
    pub basis: Basis,
    /// The cautions beside the class.
    pub overlays: Vec<OverlayId>,
}

/// What a list shows, without what to ask next and all else that takes long.
pub fn brief(findings: &Findings, judge: &mut Judge) -> Brief {
    judge.turn_to(findings);
    let possible = Possible::after(findings);
    let set = &possible.considered;
    let (treat_as, could_be) = (judge.worst_over(set), judge.best_over(set));
    let is_shown = treat_as == could_be
        && !possible.is_conflict()
        && Doubt::about(findings, &possible, judge, treat_as).is_empty();
    let overlays = overlays(findings, set, judge).into_iter().map(|overlay| overlay.id).collect();
    let basis = if is_shown { Basis::Shown } else { Basis::NotRuledOut };
    Brief { treat_as, basis, overlays }
}

/// What to act on alone, without the verdict around it; nothing where the findings contradict each other.
pub fn treat_as(findings: &Findings, judge: &mut Judge) -> Option<Class> {
    judge.turn_to(findings);
    let possible = Possible::after(findings);
    (!possible.is_conflict()).then(|| judge.worst_over(&possible.considered))
}

/// The next step alone, without the verdict around it.
pub fn next_step(
    findings: &Findings,
    judge: &mut Judge,
    beliefs: &Beliefs,
    order: Order,
) -> Option<Step> {
    judge.turn_to(findings);
    let possible = Possible::after(findings);
    let range = (judge.worst_over(&possible.considered), judge.best_over(&possible.considered));
    let foreseen = &mut Foreseen::default();
    let better = decide::next(findings, &possible, judge, range, beliefs, order, foreseen);
    let next = better
        .or_else(|| decide::clearing(findings, &Doubt::about(findings, &possible, judge, range.0)));
    next.map(|next| next.step)
}

/// What one step more of access could show; both together where neither does alone.
fn further(
    findings: &Findings,
    possible: &Possible,
    judge: &mut Judge,
    beliefs: &Beliefs,
) -> Vec<Further> {
    let missing = |access: &&Access| !findings.access.contains(access);
    let missing: Vec<Access> = Access::ALL.iter().filter(missing).copied().collect();
    let mut with = |access: &[Access]| {
        let more = Findings {
            access: findings.access.iter().chain(access).copied().collect(),
            ..findings.clone()
        };
        let best = decide::reach(&more, possible, judge, beliefs)?;
        Some(Further { access: access.to_vec(), best })
    };
    let mut further: Vec<Further> = missing.iter().filter_map(|access| with(&[*access])).collect();
    if further.is_empty() && missing.len() > 1 {
        further.extend(with(&missing));
    }
    further.extend(if_measured(findings, possible, judge, beliefs));
    further
}

/// What measuring the parts whose figures were read off could show.
fn if_measured(
    findings: &Findings,
    possible: &Possible,
    judge: &mut Judge,
    beliefs: &Beliefs,
) -> Option<Further> {
    // The judge goes by the figures as read: a part at the best end of a fifth around its marking.
    let mut unread = findings.clone();
    unread.values.retain(|_, value| value.measured);
    let any_read = unread.values.len() < findings.values.len();
    let may = any_read && findings.access.contains(&Access::CoverOff);
    let best = may.then(|| decide::reach(&unread, possible, judge, beliefs)).flatten()?;
    Some(Further { access: Vec::new(), best })
}

/// The classes still possible, worst first, and what is likely where nothing conflicts.
fn likely(
    weights: &[f64],
    possible: &Possible,
    judge: &mut Judge,
    could_be: Class,
) -> (Option<Likely>, Vec<Class>) {
    let mut shares = [0.0; Class::ALL.len()];
    let mut there = [false; Class::ALL.len()];
    let mut mark = |class: Class| {
        if let Some(there) = there.get_mut(class as usize) {
            *there = true;
        }
    };
    mark(could_be);
    for (id, _) in possible.considered.iter() {
        // What to act on goes by the worst end of values, what is likely by the usual ones.
        let usual = judge.usual_class(id);
        mark(judge.worst_class(id));
        mark(usual);
        if let Some(share) = shares.get_mut(usual as usize) {
            *share += weights.get(usize::from(id.0)).copied().unwrap_or_default();
        }
    }
    let classes = Class::ALL.iter().zip(there).filter(|(_, there)| *there);
    let classes = classes.map(|(class, _)| *class).collect();
    let total: f64 = shares.iter().sum();
    if possible.is_conflict() || total <= 0.0 {
        return (None, classes);
    }
    let most = Class::ALL
        .iter()
        .zip(shares)
        .map(|(&class, share)| Likely { class, share: share / total })
        .find(|likely| likely.share >= LIKELY);
    (most, classes)
}

fn rests_on(findings: &Findings, judge: &mut Judge, treat_as: Class) -> Vec<RestsOn> {
    if treat_as == Class::Live {
        return Vec::new();
    }
    let worse_without = |finding: Finding, judge: &mut Judge| {
        let rest = findings.without(finding);
        let possible = Possible::after(&rest);
        let without = judge.worst_over_by(&rest, &possible.considered);
        without.is_worse_than(treat_as).then_some(RestsOn { finding, without })
    };
    findings.list().into_iter().filter_map(|finding| worse_without(finding, judge)).collect()
}
