//! The words of the live touch test: what comes before it, and its steps.

use super::bench_test_views::{ProtectionView, TouchPositionView, TouchTestView};
use super::touch_says::{TouchSays, range_text};
use crate::body::TOUCH_LIMIT_VOLTS;
use crate::hazard::STOP_VOLTS;
use crate::inspection::{
    Access, Findings, Protection, Question, Stop, TouchForecast, TouchGate, TouchPosition, Verdict,
    touch_gate,
};
use crate::supply::Feed;
use crate::words::{Message, Words, volts, watts};

/// The live touch test of one inspection in words.
pub(super) struct TouchWords<'a> {
    findings: &'a Findings,
    words: &'a Words,
    gate: TouchGate,
    forecast: TouchForecast,
    says: TouchSays<'a>,
}

impl<'a> TouchWords<'a> {
    pub(super) fn new(findings: &'a Findings, verdict: &Verdict, words: &'a Words) -> Self {
        let forecast = TouchForecast::of(findings);
        let gate = touch_gate(findings, verdict, forecast.anywhere().is_some());
        let says = TouchSays { findings, words, forecast };
        Self { findings, words, gate, forecast, says }
    }

    pub(super) fn page(&self) -> TouchTestView {
        let say = |id: &str| self.words.say_id(id);
        let test = &self.findings.live_test;
        TouchTestView {
            cautions: self.cautions(),
            energised: say("touch-energised"),
            refused: self.gate.refused.iter().map(|why| self.words.say(why)).collect(),
            first: self.gate.first,
            first_what: self.gate.first.map(|id| self.look_at(id)),
            tools: self.tools(),
            qualified: test.qualified,
            protections: Protection::ALL.iter().map(|id| self.protection(*id)).collect(),
            protection: test.protection,
            earth_steps: self.earth_steps(),
            earth: test.earth_volts.map(|read| self.words.write(&volts(read))),
            earth_proven: self.says.earth_proven(),
            earth_why: self.says.earth_why(),
            proves_nothing: self.says.proves_nothing(),
            ghost: self.ghost(),
            positions: self.positions().map(|id| self.position(id)).collect(),
            next: self.next(),
            check_steps: self.check_steps(),
            low_steps: ["touch-low-unplugged", "touch-check-read"].map(say).to_vec(),
            network_steps: self.network_steps(),
            stopped: self.findings.touch_stop().map(|stop| self.stopped(stop)),
            limit_volts: TOUCH_LIMIT_VOLTS.value,
            together: self.says.together(
                self.gate.refused.is_empty(),
                self.forecast.positions(),
                |id| self.title(id),
            ),
        }
    }

    fn cautions(&self) -> Vec<String> {
        let cover_off = self.findings.access.contains(&Access::CoverOff);
        let discharge = cover_off.then_some("readings-discharge");
        let ids = ["touch-qualified", "touch-energised"].into_iter().chain(discharge);
        ids.map(|id| self.words.say_id(id)).collect()
    }

    fn look_at(&self, question: &str) -> String {
        let name = match question.strip_prefix("values.") {
            Some(value) => format!("finding-value-{value}"),
            None => format!("finding-{question}"),
        };
        self.words.say(&Message::new("touch-look-first").message("what", Message::new(name)))
    }

    fn tools(&self) -> Vec<String> {
        let network =
            Message::new("touch-tool-network").text("watts", watts(self.forecast.watts_on_line));
        vec![
            self.words.say_id("touch-tool-earth"),
            self.words.say(&network),
            self.words.say_id("touch-tool-meter"),
            self.ghost(),
        ]
    }

    fn protection(&self, id: Protection) -> ProtectionView {
        ProtectionView {
            id,
            name: self.words.say_id(&format!("touch-protection-{}", id.id())),
            says: self.words.say_id(&format!("touch-protection-{}-says", id.id())),
        }
    }

    /// The protection is tried first, then the earth by the meter.
    fn earth_steps(&self) -> Vec<String> {
        let outlet = match self.findings.supply.feed {
            Feed::Direct => "touch-earth-direct",
            Feed::BothHot => "touch-earth-both_hot",
            Feed::Isolated => "touch-earth-isolated",
            Feed::StepDownAuto => "touch-earth-step_down_auto",
        };
        let protection = self.findings.live_test.protection.map(|id| self.protection(id).says);
        let steps = [outlet, "touch-earth-enter"].map(|id| self.words.say_id(id));
        protection.into_iter().chain(steps).collect()
    }

    fn ghost(&self) -> String {
        let most = self.forecast.anywhere().map_or(0.0, |range| range.ghost_volts);
        let id = match most {
            high if high > STOP_VOLTS.value => "touch-ghost-stops",
            low if low < 1.0 => "touch-ghost-none",
            _ => "touch-ghost",
        };
        let stop = volts(STOP_VOLTS.value);
        self.words.say(&Message::new(id).text("most", volts(most)).text("stop", stop))
    }

    fn check_steps(&self) -> Vec<String> {
        let aerial = self.findings.says(Question::Terminals, "aerial_or_earth");
        let steps = [
            (self.forecast.both_ways, "touch-check-mark"),
            (true, "touch-check-unplugged"),
            (aerial, "touch-check-terminals"),
            (self.forecast.has_selector, "touch-check-selector"),
            (true, "touch-check-hands"),
            (true, "touch-check-read"),
        ];
        let steps = steps.into_iter().filter(|(is_so, _)| *is_so);
        steps.map(|(_, id)| self.words.say_id(id)).collect()
    }

    fn network_steps(&self) -> Vec<String> {
        let second =
            Message::new("touch-network-read").text("watts", watts(self.forecast.watts_on_line));
        vec![
            self.words.say_id("touch-network-unplug"),
            self.words.say(&second),
            self.words.say_id("touch-network-turns"),
        ]
    }

    fn stopped(&self, stop: Stop) -> String {
        let test = &self.findings.live_test;
        let confirmed = TouchPosition::ALL.iter().any(|position| test.is_confirmed(*position));
        let message = match stop {
            Stop::Tripped => Message::new("touch-stopped-tripped"),
            Stop::AboveLimit => Message::new("touch-stopped-above"),
            Stop::Alone if confirmed => {
                Message::new("touch-stopped-low").text("stop", volts(STOP_VOLTS.value))
            }
            Stop::Alone => Message::new("touch-stopped").text("stop", volts(STOP_VOLTS.value)),
        };
        self.words.say(&message)
    }

    /// The positions that there are, and any other that something was kept of.
    fn positions(&self) -> impl Iterator<Item = TouchPosition> + '_ {
        let there: Vec<TouchPosition> = self.forecast.positions().collect();
        let test = &self.findings.live_test;
        let all = TouchPosition::ALL.iter().copied();
        all.filter(move |position| there.contains(position) || test.knows(*position))
    }

    fn next(&self) -> Option<TouchPosition> {
        let test = &self.findings.live_test;
        if self.findings.touch_stop().is_some_and(|stop| stop != Stop::Alone)
            || !self.gate.is_open()
        {
            return None;
        }
        let there: Vec<TouchPosition> = self.forecast.positions().collect();
        // Too much on the meter alone: its range of low impedance may still go on with that position.
        let all = TouchPosition::ALL.iter().copied();
        let too_much: Vec<_> = all.filter(|position| test.is_too_much(*position)).collect();
        match too_much.as_slice() {
            [] => there.into_iter().find(|position| !test.is_done(*position)),
            [one] if there.contains(one) && !test.is_confirmed(*one) => Some(*one),
            _ => None,
        }
    }

    fn position(&self, id: TouchPosition) -> TouchPositionView {
        let test = &self.findings.live_test;
        let read = test.volts.get(&id).copied();
        let tripped = test.tripped.contains(&id).then(|| self.words.say_id("touch-tripped"));
        let range = self.forecast.range(id.switch());
        let too_much = test.is_too_much(id);
        TouchPositionView {
            id,
            title: self.title(id),
            check: self.says.check(id),
            wants_low: too_much && !test.low_checks.contains_key(&id),
            is_checked: test.checks.contains_key(&id) && !too_much,
            kept: read.map(|read| self.words.write(&volts(read))).or(tripped),
            volts: read,
            low_volts: range.map(|range| range.volts.low),
            high_volts: range.map(|range| range.volts.high),
            expected: range.map(|range| range_text(range.volts, self.words)).unwrap_or_default(),
            expected_alone: range
                .map(|range| range_text(range.alone, self.words))
                .unwrap_or_default(),
            says: self.says.of(id),
            ends: too_much
                || test.tripped.contains(&id)
                || read.is_some_and(|volts| volts > TOUCH_LIMIT_VOLTS.value),
        }
    }

    fn title(&self, id: TouchPosition) -> String {
        let way = if self.forecast.both_ways { id.id() } else { only_way(id) };
        self.words.say_id(&format!("touch-position-{way}"))
    }
}

/// The same position of a plug that goes in one way only.
const fn only_way(id: TouchPosition) -> &'static str {
    match id {
        TouchPosition::FirstOn => "only_on",
        TouchPosition::FirstOff => "only_off",
        TouchPosition::SecondOn => "second_on",
        TouchPosition::SecondOff => "second_off",
    }
}
