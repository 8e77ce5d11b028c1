//! What a list of tubes says about the heaters, in words and figures.

use super::heater_views::NamedFigure;
use crate::heaters::{
    Clash, Dropper, Place, Reading, Study, Tube, series_capacitor, voltage_share,
};
use crate::words::{
    Message, Words, amperes, farads, heater_volts, hertz, ohms, volts, watts, whole_percent,
};

/// The rms voltage behind a diode in series, as a share of the line's: half of each period, √½.
const DIODE_SHARE: f64 = std::f64::consts::FRAC_1_SQRT_2;
/// How near the heaters' sum must be for a diode to be worth a word, as a share of the line.
const DIODE_NEAR: f64 = 0.04;
/// Up to here primaries are those of sets for 100 to 127 V, V.
const LOW_LINE: f64 = 160.0;

/// A study in words, for a supply of so many hertz.
pub(super) struct HeaterWords<'a> {
    pub(super) study: &'a Study,
    pub(super) hertz: f64,
    pub(super) words: &'a Words,
}

impl HeaterWords<'_> {
    fn say(&self, message: &Message) -> String {
        self.words.say(message)
    }

    fn is_empty(&self) -> bool {
        self.study.parts.is_empty()
    }

    /// The id of the reading; `nothing` for an empty list, `string_tubes` for tubes made for strings that
    /// do not add up to one.
    fn reading(&self) -> &'static str {
        match self.study.reading {
            _ if self.is_empty() => "nothing",
            Reading::Undecided if self.study.has_string_tubes() => "string_tubes",
            reading => reading.id(),
        }
    }

    pub(super) fn heading(&self) -> String {
        self.words.say_id(&format!("heaters-{}", self.reading()))
    }

    pub(super) fn suggests(&self) -> String {
        self.words.say_id(&format!("heaters-suggests-{}", self.reading()))
    }

    /// What is left for a dropper, V, where heaters do not stand it.
    pub(super) fn left(&self) -> Option<f64> {
        let study = self.study;
        let known = study.reading.is_series() && study.is_complete() && !study.is_rectified;
        let left = study.line_volts - study.path_volts;
        (known && !study.needs_no_dropper()).then_some(left)
    }

    pub(super) fn sum(&self) -> String {
        let study = self.study;
        let share = (study.path_volts / study.line_volts - 1.0) * 100.0;
        let id = match study.reading {
            _ if self.is_empty() => "nothing",
            _ if study.is_rectified => "rectified",
            _ if study.branches > 1 => "branches",
            Reading::ParallelTransformer => "parallel",
            Reading::Battery => "battery",
            Reading::Undecided => "undecided",
            _ if study.has_barretter() => "barretter",
            Reading::SeriesWithDropper => "dropper",
            Reading::SeriesOnLine if share.abs() < 0.5 => "even",
            Reading::SeriesOnLine if share > 0.0 => "over",
            Reading::SeriesOnLine => "under",
        };
        let message = Message::new(format!("heaters-sum-{id}"))
            .text("sum", heater_volts(study.sum_volts))
            .text("path", heater_volts(study.path_volts))
            .text("line", volts(study.line_volts))
            .text("left", heater_volts((study.line_volts - study.path_volts).max(0.0)))
            .text("share", whole_percent(share.abs()));
        let sum = self.say(&message);
        let mut unknown: Vec<String> = Vec::new();
        for tube in study.unknown() {
            if !unknown.contains(&tube) {
                unknown.push(tube);
            }
        }
        if unknown.is_empty() {
            return sum;
        }
        let tubes = unknown.join(", ");
        let missing = self.say(&Message::new("heaters-sum-missing").text("tubes", tubes));
        format!("{sum} {missing}")
    }

    pub(super) fn clashes(&self) -> Vec<String> {
        let named = self.study.clashes.iter().map(|clash| self.say(&clash_message(clash)));
        let branches = (self.study.branches > 1).then(|| {
            let count = self.study.branches.to_string();
            self.say(&Message::new("clash-branches").text("count", count))
        });
        named.chain(branches).collect()
    }

    pub(super) fn cannot_prove(&self) -> Vec<String> {
        let own: &[&str] = match self.study.reading {
            _ if self.is_empty() => &[],
            Reading::SeriesOnLine | Reading::SeriesWithDropper => &["isolated"],
            Reading::ParallelTransformer => &["plate"],
            Reading::Battery => &["both"],
            Reading::Undecided => &["isolated", "plate"],
        };
        let ids = own.iter().chain(&["metal", "label"]);
        ids.map(|id| self.words.say_id(&format!("heaters-unproved-{id}"))).collect()
    }

    /// What to beware of, where a figure asks for a meter.
    pub(super) fn caution(&self) -> Option<String> {
        let metered = self.cold().is_some() || self.primary().is_some();
        metered.then(|| self.words.say_id("heaters-caution"))
    }

    pub(super) fn figures(&self) -> Vec<NamedFigure> {
        let dropper = self.study.dropper().filter(|_| self.left().is_some());
        let mut figures: Vec<NamedFigure> = self.current().into_iter().collect();
        figures.extend(dropper.map(|dropper| self.dropper("figure-dropper", None, &dropper)));
        figures.extend(dropper.and_then(|_| self.capacitor()));
        figures.extend(dropper.and_then(|_| self.diode()));
        figures.extend(self.own_droppers());
        figures.extend(self.cold());
        figures.extend(self.hot());
        figures.extend(self.primary());
        figures.extend(self.other_lines());
        figures
    }

    fn figure(&self, name: &str, figure: String, note: Option<&Message>) -> NamedFigure {
        let note = note.map(|note| self.say(note)).unwrap_or_default();
        NamedFigure { name: self.words.say_id(name), figure, note }
    }

    fn current(&self) -> Option<NamedFigure> {
        let current = self.words.write(&amperes(self.study.amperes?));
        if self.study.reading.is_series() {
            return Some(self.figure("figure-current", current, None));
        }
        let own = self.study.in_place(Place::Winding).any(|part| is_rectifier(&part.tube));
        let note = own.then(|| Message::new("figure-current-parallel-note"));
        Some(self.figure("figure-current-parallel", current, note.as_ref()))
    }

    fn dropper(&self, name: &str, tube: Option<&str>, dropper: &Dropper) -> NamedFigure {
        let figure = Message::new("figure-dropper-value")
            .text("ohms", ohms(dropper.ohms))
            .text("watts", watts(dropper.watts));
        let note = Message::new("figure-dropper-note")
            .text("volts", heater_volts(dropper.volts))
            .text("choose", watts(dropper.watts_to_choose()));
        let name = Message::new(name).text("tube", tube.unwrap_or_default());
        NamedFigure { name: self.say(&name), figure: self.say(&figure), note: self.say(&note) }
    }

    fn own_droppers(&self) -> Vec<NamedFigure> {
        let own = self.study.in_place(Place::OwnBranch);
        own.filter_map(|part| {
            let dropper = self.study.own_dropper(part)?;
            Some(self.dropper("figure-own-dropper", Some(&part.tube.name), &dropper))
        })
        .collect()
    }

    fn capacitor(&self) -> Option<NamedFigure> {
        let study = self.study;
        let (farad, across) =
            series_capacitor(study.line_volts, study.path_volts, study.amperes?, self.hertz)?;
        let note = Message::new("figure-capacitor-note")
            .text("hertz", hertz(self.hertz))
            .text("volts", heater_volts(across));
        Some(self.figure("figure-capacitor", self.words.write(&farads(farad)), Some(&note)))
    }

    fn diode(&self) -> Option<NamedFigure> {
        let study = self.study;
        let near = (study.path_volts / study.line_volts - DIODE_SHARE).abs() < DIODE_NEAR;
        let left = heater_volts(study.line_volts * DIODE_SHARE);
        let note = Message::new("figure-diode-note").text("volts", left);
        let value = self.words.say_id("figure-diode-value");
        near.then(|| self.figure("figure-diode", value, Some(&note)))
    }

    fn cold(&self) -> Option<NamedFigure> {
        let reading = self.study.plug_reading()?;
        let figure = Message::new("figure-range")
            .text("usual", ohms(reading.cold.usual))
            .text("low", ohms(reading.cold.low))
            .text("high", ohms(reading.cold.high));
        let note = match reading.dropper_ohm {
            _ if self.study.is_rectified => Message::new("figure-cold-note-rectified"),
            Some(dropper) => Message::new("figure-cold-note-dropper").text("ohms", ohms(dropper)),
            None => Message::new("figure-cold-note"),
        };
        Some(self.figure("figure-cold", self.say(&figure), Some(&note)))
    }

    fn hot(&self) -> Option<NamedFigure> {
        let reading = self.study.plug_reading().filter(|reading| reading.hot_ohm > 0.0)?;
        let note = Message::new("figure-hot-note");
        Some(self.figure("figure-hot", self.words.write(&ohms(reading.hot_ohm)), Some(&note)))
    }

    fn primary(&self) -> Option<NamedFigure> {
        let line = self.study.line_volts;
        let id = if line < LOW_LINE { "figure-primary-low" } else { "figure-primary-high" };
        let note = Message::new("figure-primary-note");
        let is_parallel = self.study.reading == Reading::ParallelTransformer;
        is_parallel.then(|| self.figure("figure-primary", self.words.say_id(id), Some(&note)))
    }

    /// The string's current 10 % below and above the line.
    fn other_lines(&self) -> Vec<NamedFigure> {
        let study = self.study;
        let known = study.reading.is_series() && study.is_complete() && !study.is_rectified;
        let Some(current) = study.amperes.filter(|_| known && !study.has_barretter()) else {
            return Vec::new();
        };
        let dropper = study.dropper().filter(|_| self.left().is_some());
        let series_ohm = dropper.map_or(0.0, |dropper| dropper.ohms);
        let at = |share: f64| {
            let line = study.line_volts * share;
            let taken = voltage_share(study.path_volts, current, series_ohm, line)? * current;
            let value = Message::new("figure-other-value")
                .text("amperes", amperes(taken))
                .text("volts", volts(line));
            Some(self.say(&value))
        };
        let values: Vec<String> = [0.9, 1.1].into_iter().filter_map(at).collect();
        let note = Message::new("figure-other-note");
        vec![self.figure("figure-other", values.join(" · "), Some(&note))]
    }
}

fn is_rectifier(tube: &Tube) -> bool {
    tube.rectifier != crate::heaters::Rectifier::None
}

/// What cannot be as listed, as a message.
pub(super) fn clash_message(clash: &Clash) -> Message {
    match clash {
        Clash::Current { tube, amperes: own, others } => Message::new("clash-current")
            .text("tube", tube.clone())
            .text("amperes", amperes(*own))
            .text("others", amperes(*others)),
        Clash::Over { sum, line } => {
            Message::new("clash-over").text("sum", heater_volts(*sum)).text("line", volts(*line))
        }
    }
}
