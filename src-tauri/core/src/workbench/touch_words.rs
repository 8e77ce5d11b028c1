//! The words of the live touch test.

use super::bench_test_views::{ProtectionView, TouchPositionView, TouchTestView};
use crate::arrangement::Spread;
use crate::body::{TOUCH_LIMIT_VOLTS, touch_test_ohms};
use crate::hazard::{STOP_VOLTS, implied_farads};
use crate::inspection::{
    Access, Findings, Protection, TouchForecast, TouchGate, TouchPosition, Verdict, floating,
    touch_gate,
};
use crate::words::{Message, Words, farads, milliamperes, volts, watts};

/// A reading is called more or less than was to be expected only beyond this factor: the forecast knows its
/// parts within ranges, and meters and supplies differ.
const CLEARLY: f64 = 1.25;

/// The live touch test of one inspection in words.
pub(super) struct TouchWords<'a> {
    findings: &'a Findings,
    words: &'a Words,
    gate: TouchGate,
    forecast: TouchForecast,
}

impl<'a> TouchWords<'a> {
    pub(super) fn new(findings: &'a Findings, verdict: &Verdict, words: &'a Words) -> Self {
        let gate = touch_gate(findings, verdict);
        Self { findings, words, gate, forecast: TouchForecast::of(findings) }
    }

    pub(super) fn page(&self) -> TouchTestView {
        let say = |id: &str| self.words.say_id(id);
        let test = &self.findings.live_test;
        TouchTestView {
            cautions: ["touch-qualified", "touch-energised"].map(say).to_vec(),
            refused: self.refused(),
            first: self.gate.first,
            first_what: self.gate.first.map(|id| self.look_at(id)),
            qualified: test.qualified,
            protections: Protection::ALL.iter().map(|id| self.protection(*id)).collect(),
            protection: test.protection,
            proves_nothing: self.proves_nothing(),
            tools: vec![
                say("touch-tool-earth"),
                self.words.say(&self.resistor()),
                say("touch-tool-meter"),
            ],
            ghost: self.ghost(),
            positions: self.forecast.positions().map(|id| self.position(id)).collect(),
            next: self.next(),
            check_steps: ["touch-check-unplugged", "touch-check-hands", "touch-check-read"]
                .map(say)
                .to_vec(),
            network_steps: ["touch-network-unplug", "touch-network-read", "touch-network-short"]
                .map(say)
                .to_vec(),
            stopped: test.is_stopped().then(|| self.stopped()),
            limit_volts: TOUCH_LIMIT_VOLTS.value,
            together: self.together(),
        }
    }

    fn refused(&self) -> Vec<String> {
        let mut refused: Vec<String> =
            self.gate.refused.iter().map(|why| self.words.say(why)).collect();
        if refused.is_empty() && self.forecast.anywhere().is_none() {
            refused.push(self.words.say_id("touch-refused-no_metal"));
        }
        if refused.is_empty() && !self.findings.access.contains(&Access::Meter) {
            refused.push(self.words.say_id("touch-refused-no_meter"));
        }
        refused
    }

    fn look_at(&self, question: &str) -> String {
        let name = match question.strip_prefix("values.") {
            Some(value) => format!("finding-value-{value}"),
            None => format!("finding-{question}"),
        };
        self.words.say(&Message::new("touch-look-first").message("what", Message::new(name)))
    }

    fn protection(&self, id: Protection) -> ProtectionView {
        ProtectionView {
            id,
            name: self.words.say_id(&format!("touch-protection-{}", id.id())),
            says: self.words.say_id(&format!("touch-protection-{}-says", id.id())),
        }
    }

    fn is_isolated(&self) -> bool {
        self.findings.live_test.protection == Some(Protection::Isolating)
    }

    fn proves_nothing(&self) -> Option<String> {
        if self.is_isolated() {
            let floating = floating(self.findings);
            let says = Message::new("touch-isolated")
                .text("farads", farads(floating.farads))
                .text("volts", volts(floating.volts))
                .text("limit", volts(TOUCH_LIMIT_VOLTS.value));
            return Some(self.words.say(&says));
        }
        self.forecast.is_earthed.then(|| self.words.say_id("touch-earthed"))
    }

    fn resistor(&self) -> Message {
        Message::new("touch-tool-network").text("watts", watts(self.forecast.watts_on_line))
    }

    fn range(&self, range: Spread) -> Message {
        Message::new("reading-range").text("low", volts(range.low)).text("high", volts(range.high))
    }

    fn ghost(&self) -> String {
        let most = self.forecast.anywhere().map_or(0.0, |range| range.ghost_volts);
        let id = if most > STOP_VOLTS.value { "touch-ghost-stops" } else { "touch-ghost" };
        let stop = volts(STOP_VOLTS.value);
        self.words.say(&Message::new(id).text("most", volts(most)).text("stop", stop))
    }

    fn stopped(&self) -> String {
        if !self.findings.live_test.tripped.is_empty() {
            return self.words.say_id("touch-stopped-tripped");
        }
        let stop = volts(STOP_VOLTS.value);
        self.words.say(&Message::new("touch-stopped").text("stop", stop))
    }

    fn next(&self) -> Option<TouchPosition> {
        let test = &self.findings.live_test;
        if test.is_stopped() {
            return None;
        }
        self.forecast.positions().find(|position| !test.is_done(*position))
    }

    fn position(&self, id: TouchPosition) -> TouchPositionView {
        let test = &self.findings.live_test;
        let check = test.checks.get(&id).copied();
        let read = test.volts.get(&id).copied();
        let tripped = test.tripped.contains(&id).then(|| self.words.say_id("touch-tripped"));
        let range = self.forecast.range(id.switch());
        let alone = range.map(|range| self.words.say(&self.range(range.alone)));
        let range = range.map(|range| range.volts);
        TouchPositionView {
            id,
            title: self.title(id),
            check: check.map(volts),
            stops: check.is_some_and(|volts| volts > STOP_VOLTS.value),
            kept: read.map(volts).or(tripped),
            volts: read,
            low_volts: range.map(|range| range.low),
            high_volts: range.map(|range| range.high),
            expected_alone: alone.unwrap_or_default(),
            expected: range.map(|range| self.words.say(&self.range(range))).unwrap_or_default(),
            says: match read {
                Some(volts) => self.says(volts, range),
                None if test.tripped.contains(&id) => vec![self.words.say_id("touch-tripped-says")],
                None => Vec::new(),
            },
            above: read.is_some_and(|volts| volts > TOUCH_LIMIT_VOLTS.value)
                || test.tripped.contains(&id),
        }
    }

    fn title(&self, id: TouchPosition) -> String {
        let way = if self.forecast.both_ways { id.id() } else { only_way(id) };
        self.words.say_id(&format!("touch-position-{way}"))
    }

    /// What one reading says: its current, the capacitor it stands for, and whether it fits.
    fn says(&self, read: f64, range: Option<Spread>) -> Vec<String> {
        let current = 1000.0 * read / touch_test_ohms(self.findings.supply.hertz).norm();
        let id = if read > TOUCH_LIMIT_VOLTS.value { "touch-above" } else { "touch-below" };
        let limit = Message::new(id)
            .text("current", milliamperes(current))
            .text("limit", volts(TOUCH_LIMIT_VOLTS.value));
        let fits = range.and_then(|range| match read {
            more if more > range.high * CLEARLY => Some("touch-more"),
            less if less * CLEARLY < range.low => Some("touch-less"),
            _ => None,
        });
        let said = [Some(limit), self.implied(read), fits.map(Message::new)];
        said.into_iter().flatten().map(|message| self.words.say(&message)).collect()
    }

    /// The capacitor from the hot leg that alone would give a reading; only where nothing carries the leak
    /// away beside the network.
    fn implied(&self, read: f64) -> Option<Message> {
        if self.is_isolated() || self.forecast.is_earthed {
            return None;
        }
        let supply = &self.findings.supply;
        let contacts = supply.contacts(supply.volts);
        let line = contacts.iter().fold(0.0_f64, |high, volts| high.max(volts.abs()));
        let capacitor = implied_farads(read, line, supply.hertz)?;
        Some(Message::new("touch-implied").text("farads", farads(capacitor)))
    }

    fn together(&self) -> Vec<String> {
        let test = &self.findings.live_test;
        let done = |position: &TouchPosition| test.is_done(*position);
        if self.findings.touch_volts().is_none() && !self.forecast.positions().any(|one| done(&one))
        {
            return Vec::new();
        }
        let open: Vec<Message> = self
            .forecast
            .positions()
            .filter(|position| !done(position))
            .map(|position| Message::new("touch-plain").text("text", self.title(position)))
            .collect();
        let open = (!open.is_empty())
            .then(|| self.words.say(&Message::new("touch-not-read").list("positions", open)));
        [Some(self.outcome()), open].into_iter().flatten().collect()
    }

    /// What the highest reading says, or the protection that tripped.
    fn outcome(&self) -> String {
        if !self.findings.live_test.tripped.is_empty() {
            return self.words.say_id("touch-tripped-says");
        }
        let above = self.findings.touches_above_limit();
        let most = volts(self.findings.touch_volts().unwrap_or_default());
        let limit = volts(TOUCH_LIMIT_VOLTS.value);
        let id = if above { "touch-together-above" } else { "touch-together-below" };
        let said = Message::new(id).text("most", most).text("limit", limit);
        match self.proves_nothing() {
            Some(why) if !above => why,
            _ => self.words.say(&said),
        }
    }
}

/// The same position of a plug that goes in one way only.
const fn only_way(id: TouchPosition) -> &'static str {
    match id {
        TouchPosition::FirstOn | TouchPosition::SecondOn => "only_on",
        TouchPosition::FirstOff | TouchPosition::SecondOff => "only_off",
    }
}
