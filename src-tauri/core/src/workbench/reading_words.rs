//! The words of meter readings.

use std::collections::HashMap;

use super::reading_views::{
    ExpectedView, MeterView, PlugDrawing, ProbeView, ReadingView, ReadingsView,
};
use super::readings::RangeView;
use crate::arrangement::{
    Arrangement, Cord, DirectParts, Isolation, LineCapacitor, LineCapacitorClass, LineSide,
    NearPin, Probe, ReadingId, Spread, Values, reading_range,
};
use crate::inspection::{
    Access, ArrangementSet, Finding, Findings, Meter, Possible, Question, Reading, Unproven,
    proven_path, traps,
};
use crate::words::{Message, Words, number, ohms};

/// The readings of one inspection in words.
pub(super) struct ReadingWords<'a> {
    findings: &'a Findings,
    words: &'a Words,
    possible: Possible,
    sound: DirectParts,
}

impl<'a> ReadingWords<'a> {
    pub(super) fn new(findings: &'a Findings, words: &'a Words) -> Self {
        let heater_ohm = findings.parts().heater_ohm;
        let sound = DirectParts::sound(&Values { heater_ohm, ..Values::default() });
        let sound = DirectParts { network: findings.network_resistor(), ..sound };
        Self { findings, words, possible: Possible::after(findings), sound }
    }

    pub(super) fn page(&self) -> ReadingsView {
        let plug = self.plug();
        let ids = self.ids();
        let taken = |id: &ReadingId| self.findings.readings.contains_key(id);
        let left_open = |id: &ReadingId| self.findings.readings_left_open.contains(id);
        let first = self.answer_first();
        let say = |id: &str| self.words.say_id(id);
        ReadingsView {
            cautions: ["readings-unplugged", "readings-discharge"].map(say).to_vec(),
            plug,
            pin_a: self.pin(plug, NearPin::A),
            pin_b: self.pin(plug, NearPin::B),
            answer_first_why: first.map(|q| say(&format!("readings-first-{}", q.id()))),
            answer_first: first.map(|question| question.id().to_owned()),
            next: ids.iter().copied().find(|id| !taken(id) && !left_open(id)),
            readings: ids.iter().map(|id| self.reading(*id, plug)).collect(),
            together: self.together(),
            meter: self.meter(),
        }
    }

    fn plug(&self) -> PlugDrawing {
        let says = |answer| self.findings.says(Question::Plug, answer);
        [
            ("two_equal_blades", PlugDrawing::TwoEqual),
            ("two_polarised_blades", PlugDrawing::TwoPolarised),
            ("three_pins", PlugDrawing::Three),
            ("earth_pin_missing", PlugDrawing::ThreeCut),
            ("three_pins_reversible", PlugDrawing::ThreeReversible),
            ("no_plug", PlugDrawing::BareEnds),
        ]
        .into_iter()
        .find(|(answer, _)| says(answer))
        .map_or(PlugDrawing::Unknown, |(_, plug)| plug)
    }

    fn pin(&self, plug: PlugDrawing, pin: NearPin) -> String {
        let kind = match plug {
            PlugDrawing::TwoPolarised => "wide",
            PlugDrawing::Three | PlugDrawing::ThreeCut => "neutral",
            PlugDrawing::BareEnds => "ends",
            PlugDrawing::TwoEqual | PlugDrawing::ThreeReversible | PlugDrawing::Unknown => "taped",
        };
        self.words.say_id(&format!("pin-{}-{kind}", pin.id()))
    }

    /// The readings that can be taken, in the order in which they prove the most.
    fn ids(&self) -> Vec<ReadingId> {
        let says = |question, answer| self.findings.says(question, answer);
        if says(Question::Plug, "battery_only") || !self.findings.access.contains(&Access::Meter) {
            return Vec::new();
        }
        let cover_off = self.findings.access.contains(&Access::CoverOff);
        let plug = self.plug();
        let earth_pin = matches!(
            plug,
            PlugDrawing::Three | PlugDrawing::ThreeReversible | PlugDrawing::Unknown
        );
        let no_metal = says(Question::BareMetal, "none_anywhere")
            && !says(Question::Terminals, "pickup_or_speaker")
            && !says(Question::Terminals, "aerial_or_earth")
            && !says(Question::Back, "missing");
        let rank = |id: &ReadingId| match id.probes() {
            Some((_, Probe::PinB)) => 0,
            Some((Probe::EarthPin, Probe::Chassis)) => 1,
            Some((_, Probe::Chassis)) => 2,
            Some((Probe::EarthPin, _)) => 3,
            _ => 4,
        };
        let can_be_taken = |id: &ReadingId| {
            let (pin, place) = id.probes().unwrap_or((Probe::PinA, Probe::PinB));
            (pin != Probe::EarthPin || earth_pin)
                && (place != Probe::Chassis || cover_off)
                && (place != Probe::Part || !no_metal)
        };
        let kept = |id: &ReadingId| self.findings.readings.contains_key(id);
        let mut ids: Vec<ReadingId> =
            ReadingId::ohmmeter().filter(|id| can_be_taken(id) || kept(id)).collect();
        ids.sort_by_key(rank);
        ids
    }

    /// What to answer first, so that the readings prove more.
    fn answer_first(&self) -> Option<Question> {
        let open = |question| !self.findings.answers.contains_key(&question);
        let three_pins = matches!(self.plug(), PlugDrawing::Three | PlugDrawing::ThreeReversible);
        [(Question::Plug, true), (Question::Kind, true), (Question::EarthLift, three_pins)]
            .into_iter()
            .find(|(question, matters)| *matters && open(*question))
            .map(|(question, _)| question)
    }

    fn reading(&self, id: ReadingId, plug: PlugDrawing) -> ReadingView {
        let (first, second) = id.probes().unwrap_or((Probe::PinA, Probe::PinB));
        let probe = |place: Probe| ProbeView { place, name: self.place(place, plug) };
        let reading = self.findings.readings.get(&id).copied();
        let before = reading.map(|_| self.before(id));
        ReadingView {
            id,
            title: self.words.say_id(&format!("reading-title-{}", id.id())),
            first: probe(first),
            second: probe(second),
            switch: id.switch(),
            how: self.how(id),
            kept: reading.map(|reading| self.read(reading)),
            ohms: reading.and_then(|reading| match reading {
                Reading::Value(ohms) => Some(ohms),
                Reading::OverRange => None,
            }),
            expected: reading
                .zip(before.as_ref())
                .map(|(reading, before)| self.expected(id, reading, before))
                .unwrap_or_default(),
            means: before.as_ref().map(|before| self.means(before)),
            traps: traps(self.findings, id)
                .iter()
                .map(|trap| self.words.say_id(&format!("trap-{}", trap.id())))
                .collect(),
        }
    }

    /// What all findings but one reading leave.
    fn before(&self, id: ReadingId) -> ArrangementSet {
        Possible::after(&self.findings.without(Finding::Reading(id))).considered
    }

    fn place(&self, place: Probe, plug: PlugDrawing) -> String {
        match place {
            Probe::PinA => self.pin(plug, NearPin::A),
            Probe::PinB => self.pin(plug, NearPin::B),
            other => self.words.say_id(&format!("probe-{}", other.id())),
        }
    }

    fn read(&self, reading: Reading) -> String {
        match reading {
            Reading::Value(value) => self.words.write(&ohms(value)),
            Reading::OverRange => self.words.say_id("reading-over-range"),
        }
    }

    fn how(&self, id: ReadingId) -> Vec<String> {
        let (pin, place) = id.probes().unwrap_or((Probe::PinA, Probe::PinB));
        let place = match (pin, place) {
            (Probe::EarthPin, Probe::Part) => "reading-how-part-highest",
            (_, Probe::Part) => "reading-how-part-lowest",
            (_, Probe::Chassis) => "reading-how-chassis",
            _ => "reading-how-pins",
        };
        let switch = id.switch().map(|switch| format!("reading-how-switch-{}", switch.id()));
        let steps = switch.into_iter().chain([place.to_owned(), "reading-how-steady".to_owned()]);
        steps.map(|step| self.words.say_id(&step)).collect()
    }

    /// What each way of building that all else leaves was to read.
    fn expected(
        &self,
        id: ReadingId,
        reading: Reading,
        before: &ArrangementSet,
    ) -> Vec<ExpectedView> {
        let read = self.findings.meter.interval(reading);
        let mut rows: Vec<(Way, Spread, bool, bool)> = Vec::new();
        let mut known: HashMap<Arrangement, Option<Spread>> = HashMap::new();
        for (place, arrangement) in before.iter() {
            let alike = alike(arrangement);
            let range =
                known.entry(alike).or_insert_with(|| reading_range(&alike, id, &self.sound));
            let (Some(way), Some(range)) = (Way::of(arrangement), *range) else {
                continue;
            };
            let fits = read.high >= range.low && read.low <= range.high;
            let possible = self.possible.considered.contains(place);
            match rows.iter_mut().find(|(known, ..)| *known == way) {
                Some((_, known, any_fits, any_possible)) => {
                    known.low = known.low.min(range.low);
                    known.high = known.high.max(range.high);
                    *any_fits |= fits;
                    *any_possible |= possible;
                }
                None => rows.push((way, range, fits, possible)),
            }
        }
        rows.into_iter().map(|row| self.expected_row(row)).collect()
    }

    fn expected_row(
        &self,
        (way, range, fits, possible): (Way, Spread, bool, bool),
    ) -> ExpectedView {
        let range = RangeView::of(range, self.findings.meter.max_ohms);
        ExpectedView {
            name: self.words.say(&way.words()),
            low_ohm: range.low_ohm,
            high_ohm: range.high_ohm,
            range: range.text(self.words),
            fits,
            possible,
        }
    }

    /// What a reading rules out beside all else.
    fn means(&self, before: &ArrangementSet) -> String {
        if self.possible.is_conflict() {
            return self.words.say_id("reading-means-conflict");
        }
        let kinds_left: Vec<Isolation> = isolations(&self.possible.considered).collect();
        let gone: Vec<Message> = isolations(before)
            .filter(|isolation| !kinds_left.contains(isolation))
            .map(|isolation| Message::new(format!("way-{}", isolation.id())))
            .collect();
        let (all, left) = (before.len(), self.possible.considered.len());
        let (all_text, left_text) = (all.to_string(), left.to_string());
        self.words.say(&match (gone.is_empty(), all == left) {
            (true, true) => Message::new("reading-means-nothing"),
            (true, false) => {
                Message::new("reading-means-fewer").text("left", left_text).text("all", all_text)
            }
            (false, _) => Message::new("reading-means-gone")
                .list("ways", gone)
                .text("left", left_text)
                .text("all", all_text),
        })
    }

    /// What the readings say together.
    fn together(&self) -> Vec<String> {
        if self.findings.readings.keys().all(|id| id.probes().is_none()) {
            return Vec::new();
        }
        let path = match proven_path(self.findings) {
            Ok(_) => "readings-path-proven",
            Err(Unproven::NotRead) => "readings-path-not_read",
            Err(Unproven::Open) => "readings-path-open",
            Err(Unproven::Unchanged) => "readings-path-unchanged",
            Err(Unproven::Motor) => "readings-path-motor",
        };
        let conflict = self.possible.is_conflict().then_some("readings-conflict");
        conflict.into_iter().chain([path]).map(|id| self.words.say_id(id)).collect()
    }

    fn meter(&self) -> MeterView {
        let meter = self.findings.meter;
        MeterView {
            max_ohms: meter.max_ohms,
            percent: meter.percent,
            digits: meter.digits,
            text: meter_line(&meter, self.words),
        }
    }
}

/// A meter's accuracy and range in one line.
pub(super) fn meter_line(meter: &Meter, words: &Words) -> String {
    words.say(
        &Message::new("meter-line")
            .text("percent", number(meter.percent))
            .text("digits", number(meter.digits))
            .text("most", ohms(meter.max_ohms)),
    )
}

/// One way of building the line side, as a person tells them apart by a meter.
#[derive(Clone, Copy, PartialEq, Eq)]
struct Way(Isolation, Option<NearPin>);

impl Way {
    fn of(arrangement: &Arrangement) -> Option<Self> {
        let line = arrangement.line?;
        let on_neither =
            matches!(arrangement.isolation, Isolation::Isolating | Isolation::LineRectified);
        Some(Self(arrangement.isolation, (!on_neither).then_some(line.near_pin)))
    }

    fn words(self) -> Message {
        let way = Message::new(format!("way-{}", self.0.id()));
        match self.1 {
            Some(pin) => Message::new(format!("way-on-pin-{}", pin.id())).message("way", way),
            None => way,
        }
    }
}

/// One arrangement for all that read alike when sound: a sound capacitor is open.
fn alike(arrangement: &Arrangement) -> Arrangement {
    let line = arrangement.line.map(|line| LineSide {
        line_capacitor: LineCapacitor::None,
        line_capacitor_class: LineCapacitorClass::Ordinary,
        cord: if line.cord.is_earthed() { Cord::ThreePinEarthed } else { Cord::TwoPinReversible },
        ..line
    });
    Arrangement { line, ..*arrangement }
}

fn isolations(set: &ArrangementSet) -> impl Iterator<Item = Isolation> + '_ {
    Isolation::ALL
        .iter()
        .copied()
        .filter(|isolation| set.iter().any(|(_, a)| a.isolation == *isolation))
}
