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
            None => check,
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
        let read = test.volts.get(&id).copied();
        let said = read.map(|read| self.measured(read));
        let doubt = self.doubt(id).map(Message::new);
        let range = self.range(id.switch()).map(|range| range.volts.high);
        let more = read.zip(range).is_some_and(|(read, high)| is_more(read, high));
        let more = more.then(|| Message::new("touch-more"));
        [said, doubt, more].into_iter().flatten().map(|message| self.words.say(&message)).collect()
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

    /// What all positions say, and which are not read.
    pub fn together(
        &self,
        positions: impl Iterator<Item = TouchPosition>,
        title: impl Fn(TouchPosition) -> String,
    ) -> Vec<String> {
        let test = &self.findings.live_test;
        let Some(outcome) = self.outcome() else { return Vec::new() };
        let goes_on = test.stop().is_none();
        let positions = positions.filter(|_| goes_on);
        let open = positions.filter(|position| !test.is_done(*position)).map(|position| {
            self.words.say(&Message::new("touch-not-read").text("position", title(position)))
        });
        [Some(outcome), self.implied()].into_iter().flatten().chain(open).collect()
    }

    /// What the highest reading says, or what ended the test; nothing before anything was read.
    fn outcome(&self) -> Option<String> {
        let test = &self.findings.live_test;
        let most = self.findings.touch_volts();
        let told = |id: &str| Some(self.words.say_id(id));
        match test.stop() {
            Some(Stop::Tripped) => return told("touch-tripped-says"),
            Some(Stop::Alone) if most.is_none_or(|volts| volts <= TOUCH_LIMIT_VOLTS.value) => {
                let stop = volts(STOP_VOLTS.value);
                return Some(self.words.say(&Message::new("touch-alone-says").text("stop", stop)));
            }
            _ => {}
        }
        let most = most?;
        let of = |id: &str| {
            let limit = volts(TOUCH_LIMIT_VOLTS.value);
            Some(self.words.say(&Message::new(id).text("most", volts(most)).text("limit", limit)))
        };
        if most > TOUCH_LIMIT_VOLTS.value {
            return of("touch-together-above");
        }
        if TouchPosition::ALL.iter().any(|position| self.doubt(*position).is_some()) {
            return told("touch-together-doubt");
        }
        self.proves_nothing().or_else(|| of("touch-together-below"))
    }

    /// The capacitor from the hot wire that alone would give the highest reading; only where nothing carries
    /// the leak away beside the network.
    fn implied(&self) -> Option<String> {
        let test = &self.findings.live_test;
        let doubted = TouchPosition::ALL.iter().any(|position| self.doubt(*position).is_some());
        let ended = matches!(test.stop(), Some(Stop::Tripped | Stop::Alone));
        if self.is_isolated() || self.forecast.may_be_earthed || doubted || ended {
            return None;
        }
        let supply = &self.findings.supply;
        let capacitor = implied_farads(test.most_volts()?, self.forecast.hot_volts, supply.hertz)?;
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
