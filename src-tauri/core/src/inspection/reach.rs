//! Which reach the answers about touchable metal leave, taken together.
//!
//! Bare metal counts as joined to the chassis until somebody has traced or measured that it is not.
//! `bare_metal` is a look at every place, sockets and terminals included. Where it is not answered,
//! a missing back or a pickup terminal says that some metal can be touched but not that there is
//! nothing worse, so a jack or metal on the common stays possible.

use std::sync::LazyLock;

use crate::arrangement::Reach;

use super::bank::Question;
use super::findings::Findings;
use super::set::ArrangementSet;

/// The reaches left, one bit each: for sets whose chassis is the common, and for those whose is not.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Allowed {
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
        Self { joined: reaches, own_common: reaches }
    }

    /// The arrangements that stay.
    pub fn set(self) -> ArrangementSet {
        let mut set = BY_REACH.no_line.clone();
        for &reach in Reach::ALL {
            for (left, by_reach) in
                [(self.joined, &BY_REACH.joined), (self.own_common, &BY_REACH.own_common)]
            {
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
    joined: Vec<ArrangementSet>,
    own_common: Vec<ArrangementSet>,
    no_line: ArrangementSet,
}

static BY_REACH: LazyLock<ByReach> = LazyLock::new(|| {
    let sets = |own_common: bool| {
        Reach::ALL
            .iter()
            .map(|&reach| {
                ArrangementSet::of(|a| {
                    a.isolation.has_own_common() == own_common
                        && a.line.is_some_and(|line| line.reach == reach)
                })
            })
            .collect()
    };
    ByReach {
        joined: sets(false),
        own_common: sets(true),
        no_line: ArrangementSet::of(|a| a.line.is_none()),
    }
});

/// The reaches left by the answers to `bare_metal`, `back`, `terminals` and `metal_joined`.
pub fn allowed(findings: &Findings) -> Allowed {
    let says = |question, id| findings.says(question, id);
    let joined_no = says(Question::MetalJoined, "no");
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
        return Allowed { joined: EXPOSED, own_common: if on_common { COMMON } else { EXPOSED } };
    }
    if says(Question::Back, "missing") {
        return Allowed::same(if looked { EXPOSED } else { EXPOSED | HANDHELD | COMMON });
    }
    nothing_found(findings, looked || joined_no)
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
    Allowed { joined: EXPOSED | unseen, own_common: own_common | unseen }
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
