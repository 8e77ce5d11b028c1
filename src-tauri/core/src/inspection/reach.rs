//! Which reach the answers about touchable metal leave, taken together.
//!
//! Bare metal counts as joined to the chassis until somebody has traced or measured that it is not.
//! `bare_metal` is a look at every place, sockets and terminals included. Where it is not answered,
//! a missing back or a pickup terminal says that some metal can be touched but not that there is
//! nothing worse, so a jack or metal on the common stays possible.

use std::sync::LazyLock;

use crate::arrangement::{Arrangement, Isolation, Reach};

use super::bank::Question;
use super::findings::Findings;
use super::measured::MetalReads;
use super::set::ArrangementSet;

/// The reaches left, one bit each: for sets whose chassis is tied to a leg, for others whose chassis is
/// the common, and for those whose is not.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Allowed {
    tied: u8,
    joined: u8,
    own_common: u8,
}

const fn bit(reach: Reach) -> u8 {
    1 << reach as u8
}

const CLOSED: u8 = bit(Reach::Closed);
const AERIAL: u8 = bit(Reach::AerialTerminal);
const EXPOSED: u8 = bit(Reach::Exposed);
const HANDHELD: u8 = bit(Reach::Handheld);
const COMMON: u8 = bit(Reach::CommonExposed);
const ALL: u8 = CLOSED | AERIAL | EXPOSED | HANDHELD | COMMON;

impl Allowed {
    const fn same(reaches: u8) -> Self {
        Self::of(reaches, reaches)
    }

    const fn of(joined: u8, own_common: u8) -> Self {
        Self { tied: joined, joined, own_common }
    }

    /// Whether an arrangement's reach is among them.
    pub fn has(self, arrangement: &Arrangement) -> bool {
        let left = match arrangement.isolation {
            isolation if isolation.has_own_common() => self.own_common,
            isolation if isolation.is_tied() => self.tied,
            _ => self.joined,
        };
        arrangement.line.is_none_or(|line| left & bit(line.reach) != 0)
    }

    /// The arrangements that stay.
    pub fn set(self) -> ArrangementSet {
        let mut set = BY_REACH.no_line.clone();
        for &reach in Reach::ALL {
            for (left, by_reach) in [
                (self.tied, &BY_REACH.tied),
                (self.joined, &BY_REACH.joined),
                (self.own_common, &BY_REACH.own_common),
            ] {
                if left & bit(reach) != 0
                    && let Some(more) = by_reach.get(reach as usize)
                {
                    set.add(more);
                }
            }
        }
        set
    }
}

struct ByReach {
    tied: Vec<ArrangementSet>,
    joined: Vec<ArrangementSet>,
    own_common: Vec<ArrangementSet>,
    no_line: ArrangementSet,
}

static BY_REACH: LazyLock<ByReach> = LazyLock::new(|| {
    let sets = |is_of: fn(Isolation) -> bool| {
        let having = |reach: Reach| {
            ArrangementSet::of(|a| {
                is_of(a.isolation) && a.line.is_some_and(|line| line.reach == reach)
            })
        };
        Reach::ALL.iter().map(|&reach| having(reach)).collect()
    };
    ByReach {
        tied: sets(Isolation::is_tied),
        joined: sets(|isolation| !isolation.is_tied() && !isolation.has_own_common()),
        own_common: sets(Isolation::has_own_common),
        no_line: ArrangementSet::of(|a| a.line.is_none()),
    }
});

/// The reaches left by the answers to `bare_metal`, `back`, `terminals` and `metal_joined`.
///
/// Metal that reads open from both pins, the path proven, is not the chassis of a set whose chassis is tied
/// to a leg: for those it counts as traced to nothing. Any other chassis may read open too. Metal through
/// which something comes from a pin may be the common itself where the chassis is not.
pub fn allowed(findings: &Findings) -> Allowed {
    allowed_by(findings, MetalReads::of(findings))
}

/// The same by the answers, where it is known what the metal reads.
pub fn allowed_by(findings: &Findings, reads: MetalReads) -> Allowed {
    let traced = by_answers(findings, findings.says(Question::MetalJoined, "no"));
    match reads {
        MetalReads::Nothing => traced,
        MetalReads::Open => Allowed { tied: by_answers(findings, true).tied, ..traced },
        MetalReads::Joined if traced.own_common & EXPOSED != 0 => {
            Allowed { own_common: traced.own_common | COMMON, ..traced }
        }
        MetalReads::Joined => traced,
    }
}

fn by_answers(findings: &Findings, joined_no: bool) -> Allowed {
    let says = |question, id| findings.says(question, id);
    let looked = findings.known(Question::BareMetal).is_some();
    let bare = |id| !joined_no && says(Question::BareMetal, id);
    let pickup = !joined_no && says(Question::Terminals, "pickup_or_speaker");
    if bare("instrument_jack") {
        return Allowed::same(HANDHELD | COMMON);
    }
    if bare("socket_or_pickup") || pickup {
        return socket(findings, looked);
    }
    if bare("screws_or_shafts") || bare("panel_or_cabinet") {
        let on_common = says(Question::MetalJoined, "common");
        return Allowed::of(EXPOSED, if on_common { COMMON } else { EXPOSED });
    }
    if says(Question::Back, "missing") {
        let terminals = findings.known(Question::Terminals).is_some();
        return match (looked, terminals) {
            (false, _) => Allowed::same(EXPOSED | HANDHELD | COMMON),
            // A pickup terminal that nobody was asked about may be on a common of its own.
            (true, false) => Allowed::of(EXPOSED, EXPOSED | COMMON),
            (true, true) => Allowed::same(EXPOSED),
        };
    }
    nothing_found(findings, looked || joined_no)
}

/// Whether metal that can be touched was found.
pub fn is_metal_found(findings: &Findings) -> bool {
    is_bare_metal_found(findings)
        || findings.says(Question::Terminals, "pickup_or_speaker")
        || findings.says(Question::Back, "missing")
}

/// Whether a look at every place found bare metal.
pub fn is_bare_metal_found(findings: &Findings) -> bool {
    findings.known(Question::BareMetal).is_some()
        && !findings.says(Question::BareMetal, "none_anywhere")
}

/// Metal at a socket or a pickup: on the chassis or on the common, until traced.
fn socket(findings: &Findings, looked: bool) -> Allowed {
    let unseen = if looked { 0 } else { HANDHELD };
    let own_common = if findings.says(Question::MetalJoined, "chassis") {
        EXPOSED
    } else if findings.says(Question::MetalJoined, "common") {
        COMMON
    } else {
        EXPOSED | COMMON
    };
    // Whatever else may be there and was not looked for can be worse than what was traced.
    let own_common = if looked { own_common } else { EXPOSED | COMMON };
    Allowed::of(EXPOSED | unseen, own_common | unseen)
}

/// No metal found: closed only when every question about it is answered.
fn nothing_found(findings: &Findings, metal_settled: bool) -> Allowed {
    let aerial = findings.says(Question::Terminals, "aerial_or_earth");
    let settled = metal_settled
        && findings.says(Question::Back, "fitted")
        && findings.known(Question::Terminals).is_some();
    Allowed::same(match (settled, aerial) {
        (true, true) => AERIAL,
        (true, false) => CLOSED,
        (false, true) => ALL & !CLOSED,
        (false, false) => ALL,
    })
}

/// The questions about touchable metal, in the order in which they are asked; read together.
pub(super) const METAL: [Question; 4] =
    [Question::BareMetal, Question::Back, Question::Terminals, Question::MetalJoined];

/// Which answers about metal leave a reach out, by the reach they leave out.
pub struct Exclusions(Vec<(Vec<Question>, Allowed)>);

/// The smallest groups of the answers given about metal, each with what it alone leaves.
pub fn exclusions(findings: &Findings) -> Exclusions {
    let groups = (1u8..1 << METAL.len()).map(|mask| {
        let kept = METAL.iter().enumerate().filter(|(place, _)| mask & (1 << place) != 0);
        kept.map(|(_, question)| *question).collect::<Vec<_>>()
    });
    let known = groups.filter(|group| group.iter().all(|q| findings.known(*q).is_some()));
    let alone = |group: Vec<Question>| {
        let mut told = findings.clone();
        told.answers.retain(|question, _| !METAL.contains(question) || group.contains(question));
        let left = allowed(&told);
        (group, left)
    };
    let mut groups: Vec<_> = known.map(alone).collect();
    groups.sort_by_key(|(group, _)| group.len());
    Exclusions(groups)
}

impl Exclusions {
    /// The smallest groups that leave an arrangement out; none where all answers together let it stay.
    pub fn of(&self, arrangement: &Arrangement) -> Vec<&[Question]> {
        let whole = self.0.last().is_none_or(|(_, left)| left.has(arrangement));
        let mut smallest: Vec<&[Question]> = Vec::new();
        for (group, left) in self.0.iter().filter(|_| !whole) {
            let holds_smaller =
                smallest.iter().any(|small| small.iter().all(|q| group.contains(q)));
            if !holds_smaller && !left.has(arrangement) {
                smallest.push(group);
            }
        }
        smallest
    }
}
