//! What the readings of a live touch test say, one by one and together.

use crate::arrangement::{Spread, Switch};
use crate::body::{TOUCH_LIMIT_MA, TOUCH_LIMIT_VOLTS, TOUCH_TEST_OHM, touch_test_ohms};
use crate::hazard::{STOP_VOLTS, TouchRange, implied_farads};
use crate::inspection::{
    Findings, Protection, Stop, TouchForecast, TouchPosition, ValueId, floating,
};
use crate::words::{Message, Words, farads, milliamperes, milliwatts, volts};

/// A reading is called more or less than was to be expected only beyond this factor and these volts: the
/// forecast knows its parts within ranges, and meters, supplies and earths differ.
const CLEARLY: f64 = 1.25;
const CLEARLY_VOLTS: f64 = 0.05;

/// The earth and the meter are proven where the hot contact shows its voltage within this share.
const PROVEN: f64 = 0.15;

/// What the readings of one test say.
#[derive(Clone, Copy)]
pub(super) struct TouchSays<'a> {
    pub(super) findings: &'a Findings,
    pub(super) words: &'a Words,
    pub(super) forecast: TouchForecast,
}

pub(super) fn range_text(range: Spread, words: &Words) -> String {
    let range =
        Message::new("reading-range").text("low", volts(range.low)).text("high", volts(range.high));
    words.say(&range)
}

fn is_more(read: f64, high: f64) -> bool {
    read > high * CLEARLY + CLEARLY_VOLTS
}

fn is_less(read: f64, low: f64) -> bool {
    read * CLEARLY + CLEARLY_VOLTS < low
}

impl TouchSays<'_> {
    fn is_isolated(&self) -> bool {
        self.findings.live_test.protection == Some(Protection::Isolating)
    }

    /// Whether the hot contact stands at its voltage against the earth.
    pub fn earth_proven(&self) -> bool {
        let hot = self.forecast.hot_volts;
        let within = |read: f64| (read - hot).abs() <= PROVEN * hot;
        self.findings.live_test.earth_volts.is_some_and(within)
    }

    /// Why the earth is not proven; nothing before it was read, or where it is.
    pub fn earth_why(&self) -> Option<String> {
        self.findings.live_test.earth_volts?;
        let hot = volts(self.forecast.hot_volts);
        let why = Message::new("touch-earth-unproven").text("volts", hot);
        (!self.earth_proven()).then(|| self.words.say(&why))
    }

    /// Why a low reading proves nothing here.
    pub fn proves_nothing(&self) -> Option<String> {
        if self.is_isolated() {
            let floating = floating(self.findings);
            let says = Message::new("touch-isolated")
                .text("farads", farads(floating.farads))
                .text("volts", volts(floating.volts))
                .text("limit", volts(TOUCH_LIMIT_VOLTS.value));
            return Some(self.words.say(&says));
        }
        let forecast = &self.forecast;
        let id = match (forecast.is_earthed, forecast.may_be_earthed) {
            (true, _) => "touch-earthed",
            (false, true) => "touch-may_be_earthed",
            (false, false) => return None,
        };
        Some(self.words.say_id(id))
    }

    /// What the meter alone showed, its range of low impedance too.
    pub fn check(&self, id: TouchPosition) -> Option<String> {
        let test = &self.findings.live_test;
        let check = volts(*test.checks.get(&id)?);
        Some(match test.low_checks.get(&id) {
            None => self.words.write(&check),
            Some(low) => self.words.say(
                &Message::new("touch-check-both").text("high", check).text("low", volts(*low)),
            ),
        })
    }

    /// What one position says: its current and watts, and what does not fit.
    pub fn of(&self, id: TouchPosition) -> Vec<String> {
        let test = &self.findings.live_test;
        if test.tripped.contains(&id) {
            return vec![self.words.say_id("touch-tripped-says")];
        }
        let said = test.volts.get(&id).map(|read| self.measured(*read));
        let doubt = self.doubt(id).map(Message::new);
        let more = self.reads_more(id).then(|| Message::new("touch-more"));
        [said, doubt, more].into_iter().flatten().map(|message| self.words.say(&message)).collect()
    }

    /// Whether a position reads more than sound parts explain.
    fn reads_more(&self, id: TouchPosition) -> bool {
        let read = self.findings.live_test.volts.get(&id);
        let range = self.range(id.switch()).map(|range| range.volts.high);
        read.zip(range).is_some_and(|(read, high)| is_more(*read, high))
    }

    /// What is forecast where the test can show it; behind an isolating transformer it cannot.
    fn range(&self, switch: Switch) -> Option<TouchRange> {
        self.forecast.range(switch).filter(|_| !self.is_isolated())
    }

    fn measured(&self, read: f64) -> Message {
        let current = 1000.0 * read / touch_test_ohms(self.findings.supply.hertz).norm();
        let id = if read > TOUCH_LIMIT_VOLTS.value { "touch-above" } else { "touch-below" };
        Message::new(id)
            .text("current", milliamperes(current))
            .text("watts", milliwatts(read * read / TOUCH_TEST_OHM.value))
            .text("limit", volts(TOUCH_LIMIT_VOLTS.value))
            .text("limit_current", milliamperes(TOUCH_LIMIT_MA.value))
    }

    /// Why a reading of a position cannot be trusted: the network lowers what the meter alone shows, and never
    /// raises it; and where something has to be read, nothing is a broken earth or meter.
    fn doubt(&self, id: TouchPosition) -> Option<&'static str> {
        let test = &self.findings.live_test;
        let (check, read) = (test.alone(id), test.volts.get(&id).copied());
        let range = self.range(id.switch());
        let apart = check.zip(read).is_some_and(|(check, read)| is_more(read, check));
        let unchecked = read.is_some() && check.is_none();
        let low_check = test.checks.get(&id).zip(range);
        let low_check = low_check.is_some_and(|(check, range)| is_less(*check, range.alone.low));
        let low_read = read.zip(range).is_some_and(|(read, range)| is_less(read, range.volts.low));
        [
            (apart, "touch-apart"),
            (unchecked, "touch-unchecked"),
            (low_check || low_read, "touch-less"),
        ]
        .into_iter()
        .find(|(is_so, _)| *is_so)
        .map(|(_, id)| id)
    }

    /// What all positions say, and which are not read; only what is bad where the test `may` not be made.
    pub fn together(
        &self,
        may: bool,
        positions: impl Iterator<Item = TouchPosition> + Clone,
        title: impl Fn(TouchPosition) -> String,
    ) -> Vec<String> {
        let test = &self.findings.live_test;
        let Some(outcome) = self.outcome(positions.clone()) else { return Vec::new() };
        if self.findings.touch_stop().is_some() {
            return std::iter::once(outcome).chain(self.implied()).collect();
        }
        if !may {
            return Vec::new();
        }
        let more = TouchPosition::ALL.iter().any(|position| self.reads_more(*position));
        let more = more.then(|| self.words.say_id("touch-more"));
        let open = positions.filter(|position| !test.is_done(*position)).map(|position| {
            self.words.say(&Message::new("touch-not-read").text("position", title(position)))
        });
        let implied = if self.is_doubtful(std::iter::empty()) { None } else { self.implied() };
        [Some(outcome), more, implied].into_iter().flatten().chain(open).collect()
    }

    /// Whether some reading, or the earth, cannot be trusted. With every position read, the highest of them
    /// may not be less than the least that the highest can be.
    fn is_doubtful(&self, mut positions: impl Iterator<Item = TouchPosition>) -> bool {
        let test = &self.findings.live_test;
        let all_read = positions.next().is_some_and(|first| {
            test.volts.contains_key(&first) && positions.all(|one| test.volts.contains_key(&one))
        });
        let most = test.most_volts().unwrap_or_default();
        (all_read && !self.is_isolated() && is_less(most, self.forecast.least_most()))
            || !self.earth_proven()
            || TouchPosition::ALL.iter().any(|position| self.doubt(*position).is_some())
    }

    /// What the highest reading says, or what ended the test; nothing before anything was read.
    fn outcome(&self, positions: impl Iterator<Item = TouchPosition>) -> Option<String> {
        let of = |id: &str| {
            let message = Message::new(id)
                .text("most", volts(self.findings.touch_volts().unwrap_or_default()))
                .text("limit", volts(TOUCH_LIMIT_VOLTS.value))
                .text("stop", volts(STOP_VOLTS.value));
            Some(self.words.say(&message))
        };
        match self.findings.touch_stop() {
            Some(Stop::Tripped) => return of("touch-tripped-says"),
            Some(Stop::AboveLimit) => return of("touch-together-above"),
            Some(Stop::Alone) => return of("touch-alone-says"),
            None => {}
        }
        self.findings.touch_volts()?;
        if self.findings.live_test.volts.is_empty() {
            return of("touch-told-says");
        }
        if self.is_doubtful(positions) {
            return of("touch-together-doubt");
        }
        self.proves_nothing().or_else(|| of("touch-together-below"))
    }

    /// The capacitor from the hot wire that alone would give the highest reading; only where nothing carries
    /// the leak away beside the network.
    fn implied(&self) -> Option<String> {
        let ended = matches!(self.findings.touch_stop(), Some(Stop::Tripped | Stop::Alone));
        if self.is_isolated() || self.forecast.may_be_earthed || !self.earth_proven() || ended {
            return None;
        }
        let supply = &self.findings.supply;
        let most = self.findings.live_test.most_volts()?;
        let capacitor = implied_farads(most, self.forecast.hot_volts, supply.hertz)?;
        let implied = farads(capacitor);
        let known = self.findings.values.get(&ValueId::LineCapacitor);
        let message = match known {
            None => Message::new("touch-implied").text("farads", implied),
            Some(part) => Message::new("touch-implied-known")
                .text("farads", implied)
                .text("known", farads(part.value)),
        };
        Some(self.words.say(&message))
    }
}
