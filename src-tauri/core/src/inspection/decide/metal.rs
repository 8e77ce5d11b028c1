//! The four questions about touchable metal, whose answers are only read together.

use std::sync::LazyLock;

use super::super::bank::Question;
use super::super::findings::{Answer, Findings};
use super::super::measured::MetalReads;
use super::super::reach::{self, METAL};
use crate::arrangement::{Arrangement, Isolation, LineSide, Reach};
use crate::supply::Supply;

/// What of an arrangement can be touched, and what its chassis is: all that these answers bear on.
pub(crate) type Kind = u8;

/// A unit without a line side: no answer about metal says anything of it.
pub(super) const NO_LINE: Kind = 15;
/// One for each reach of each of three sorts of chassis.
const KINDS: Kind = 16;

/// The outcome of each of the four questions, 0 where nothing is known.
pub(crate) type Digits = [u8; 4];

/// The outcomes of each question, with the answer that stands for each.
const BARE: &[&[&str]] =
    &[&["none_anywhere"], &["screws_or_shafts"], &["instrument_jack"], &["socket_or_pickup"]];
const BACK: &[&[&str]] = &[&["fitted"], &["missing"]];
const TERMINALS: &[&[&str]] = &[
    &["none"],
    &["aerial_or_earth"],
    &["pickup_or_speaker"],
    &["aerial_or_earth", "pickup_or_speaker"],
];
const JOINED: &[&[&str]] = &[&["chassis"], &["common"], &["no"]];
const OUTCOMES: [&[&[&str]]; 4] = [BARE, BACK, TERMINALS, JOINED];

/// How many outcomes one of the four has.
pub(super) fn outcomes(place: usize) -> u8 {
    OUTCOMES.get(place).map_or(0, |outcomes| outcomes.len() as u8)
}

/// The sort of an arrangement.
pub(super) fn kind(arrangement: &Arrangement) -> Kind {
    let sort = match arrangement.isolation {
        isolation if isolation.has_own_common() => 2,
        isolation if isolation.is_tied() => 0,
        _ => 1,
    };
    arrangement.line.map_or(NO_LINE, |line| sort * 5 + line.reach as u8)
}

/// The kinds that answers leave, one bit each.
pub(super) fn left(digits: Digits, reads: MetalReads) -> u16 {
    let [nothing, open, joined] = &*TABLES;
    let table = match reads {
        MetalReads::Nothing => nothing,
        MetalReads::Open => open,
        MetalReads::Joined => joined,
    };
    table.get(place(digits)).copied().unwrap_or(u16::MAX)
}

fn place([bare, back, terminals, joined]: Digits) -> usize {
    ((usize::from(bare) * 3 + usize::from(back)) * 5 + usize::from(terminals)) * 4
        + usize::from(joined)
}

static TABLES: LazyLock<[Vec<u16>; 3]> =
    LazyLock::new(|| [MetalReads::Nothing, MetalReads::Open, MetalReads::Joined].map(table));

fn table(reads: MetalReads) -> Vec<u16> {
    let mut table = Vec::with_capacity(300);
    for bare in 0..=4 {
        for back in 0..=2 {
            for terminals in 0..=4 {
                for joined in 0..=3 {
                    table.push(kinds_left([bare, back, terminals, joined], reads));
                }
            }
        }
    }
    table
}

fn kinds_left(digits: Digits, reads: MetalReads) -> u16 {
    let allowed = reach::allowed_by(&told(digits), reads);
    let stays = |kind: &Kind| example(*kind).is_none_or(|example| allowed.has(&example));
    (0..KINDS).filter(stays).fold(0, |mask, kind| mask | 1 << kind)
}

/// Findings that say just this.
fn told(digits: Digits) -> Findings {
    let mut findings = Findings::new(Supply::new(120.0, 60.0));
    for ((question, outcomes), digit) in METAL.iter().zip(OUTCOMES).zip(digits) {
        let answer = usize::from(digit).checked_sub(1).and_then(|outcome| outcomes.get(outcome));
        if let Some(ids) = answer {
            let answer = match (question, ids) {
                (Question::Back | Question::MetalJoined, [id]) => Answer::One(id),
                _ => Answer::Several(ids.iter().copied().collect()),
            };
            findings.answers.insert(*question, answer);
        }
    }
    findings
}

/// An arrangement of a kind; nothing for one without a line side.
fn example(kind: Kind) -> Option<Arrangement> {
    use crate::arrangement::{Cord, LineCapacitor, LineCapacitorClass, NearPin, SwitchLeg};
    let isolation = [Isolation::LineTied, Isolation::Isolating, Isolation::LineFloated]
        .get(usize::from(kind / 5))?;
    let line = LineSide {
        cord: Cord::TwoPinReversible,
        near_pin: NearPin::B,
        line_capacitor: LineCapacitor::None,
        line_capacitor_class: LineCapacitorClass::Ordinary,
        switch_leg: SwitchLeg::Near,
        reach: *Reach::ALL.get(usize::from(kind % 5))?,
    };
    Some(Arrangement { isolation: *isolation, line: Some(line) })
}

/// What the findings say already.
pub(super) fn digits(findings: &Findings) -> Digits {
    let says = |question, ids: &[&str]| ids.iter().any(|id| findings.says(question, id));
    let first = |question: Question, ladder: &[(&[&str], u8)]| {
        let known = ladder.iter().find(|(ids, _)| says(question, ids));
        known.map_or(0, |(_, digit)| *digit)
    };
    let aerial = says(Question::Terminals, &["aerial_or_earth"]);
    let pickup = says(Question::Terminals, &["pickup_or_speaker"]);
    [
        first(
            Question::BareMetal,
            &[
                (&["instrument_jack"], 3),
                (&["socket_or_pickup"], 4),
                (&["screws_or_shafts", "panel_or_cabinet"], 2),
                (&["none_anywhere"], 1),
            ],
        ),
        first(Question::Back, &[(&["fitted"], 1), (&["missing"], 2)]),
        match (aerial, pickup) {
            (true, true) => 4,
            (false, true) => 3,
            (true, false) => 2,
            (false, false) => u8::from(says(Question::Terminals, &["none"])),
        },
        first(Question::MetalJoined, &[(&["chassis"], 1), (&["common"], 2), (&["no"], 3)]),
    ]
}

/// Whether metal that can be touched was found.
pub(super) const fn is_found([bare, back, terminals, _]: Digits) -> bool {
    bare > 1 || back == 2 || terminals > 2
}

/// The outcome of metal that is traced to nothing.
pub(super) const NO: u8 = 2;

/// Whether metal was found that nobody has tried to trace; it may be joined to nothing.
pub(crate) fn is_untraced(findings: &Findings) -> bool {
    !findings.answers.contains_key(&Question::MetalJoined) && reach::is_metal_found(findings)
}

/// Whether it may be traced at this access.
pub(super) fn may_be_traced(findings: &Findings) -> bool {
    findings.may_ask(Question::MetalJoined) && reach::is_metal_found(findings)
}

/// The outcome that somebody who looks gets of one of the four, where metal is `found` already or not;
/// nothing where there is none to have.
pub(super) fn outcome(place: usize, kind: Kind, found: bool) -> Option<u8> {
    if kind == NO_LINE {
        return [Some(0), Some(0), Some(0), None].get(place).copied().flatten();
    }
    let reach = Reach::ALL.get(usize::from(kind % 5))?;
    match place {
        0 => Some(match reach {
            Reach::Closed | Reach::AerialTerminal => 0,
            Reach::Exposed => 1,
            Reach::Handheld => 2,
            Reach::CommonExposed => 3,
        }),
        1 => Some(0),
        2 => Some(u8::from(*reach == Reach::AerialTerminal)),
        _ => match reach {
            // What was found there all the same is joined to nothing.
            Reach::Closed | Reach::AerialTerminal => found.then_some(NO),
            Reach::CommonExposed => Some(1),
            Reach::Exposed | Reach::Handheld => Some(0),
        },
    }
}

/// The outcomes that each arrangement gives of one of the four, one bit each.
pub(super) fn gives(place: usize, found: bool) -> &'static [u16] {
    static GIVES: LazyLock<[Vec<Vec<u16>>; 2]> = LazyLock::new(|| {
        [false, true].map(|found| {
            let of = |place: usize| {
                let bit = |a: &Arrangement| outcome(place, kind(a), found).map_or(0, |o| 1 << o);
                crate::arrangement::all().iter().map(bit).collect()
            };
            (0..METAL.len()).map(of).collect()
        })
    });
    let [not_found, if_found] = &*GIVES;
    let gives = if found { if_found } else { not_found };
    gives.get(place).map_or(&[], Vec::as_slice)
}
