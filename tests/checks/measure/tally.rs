//! What came out of many cases, and what has to come out.

use super::plug::{Answer, Plug};

/// Share of the cases that are answered, at least.
pub const ANSWERED: f64 = 0.80;
/// Share of the answers that are right, at least.
pub const RIGHT: f64 = 0.98;
/// Share of the widths, and of the ratios, that are within their own bound, at least.
pub const INSIDE: f64 = 0.95;
/// The middle one of all bounds, mm, at most: half of what two kinds of blades differ by. Without
/// this a bound of a metre would pass.
pub const BOUND: f64 = (7.92 - 6.35) / 2.0;

/// What was said of a photo.
#[derive(Clone, Debug)]
pub struct Said {
    /// Of the plug.
    pub answer: Answer,
    /// Width and bound of each blade, mm; `None` where none was stated.
    pub widths: [Option<[f64; 2]>; 2],
    /// The greater width over the smaller, and its bound; `None` where none was stated.
    pub ratio: Option<[f64; 2]>,
}

impl Said {
    /// The same with other figures.
    pub fn with_widths(self, other: impl Fn([f64; 2]) -> [f64; 2]) -> Self {
        Self { widths: self.widths.map(|width| width.map(&other)), ..self }
    }
}

/// What many cases came to.
#[derive(Default)]
pub struct Tally {
    /// Cases.
    pub cases: usize,
    /// Those with an answer.
    pub answered: usize,
    /// Answers that are right.
    pub right: usize,
    /// Polarised plugs that were said to have equal blades.
    pub wrongly_equal: usize,
    /// Widths without a figure.
    pub unstated: usize,
    /// Widths within their bound.
    pub inside: usize,
    /// Bounds, mm.
    pub bounds: Vec<f64>,
    /// Ratios within their bound.
    pub ratios: usize,
    /// Seeds of the answers that are wrong.
    pub wrong: Vec<u64>,
}

impl Tally {
    /// Counts what was said of one plug.
    pub fn count(&mut self, seed: u64, plug: &Plug, said: &Said) {
        self.cases += 1;
        let [first, second] = plug.pins.each_ref().map(|pin| pin.width);
        if said.answer != Answer::Open {
            self.answered += 1;
            if said.answer == plug.answer {
                self.right += 1;
            } else {
                self.wrong.push(seed);
            }
            let polarised = matches!(plug.answer, Answer::Polarised(_));
            self.wrongly_equal += usize::from(polarised && said.answer == Answer::Equal);
        }
        let ratio = first.max(second) / first.min(second);
        let near = |[said, bound]: [f64; 2]| (said - ratio).abs() <= bound;
        self.ratios += usize::from(said.ratio.is_some_and(near));
        for (truth, said) in [first, second].into_iter().zip(said.widths) {
            let Some([width, bound]) = said else {
                self.unstated += 1;
                continue;
            };
            self.inside += usize::from((width - truth).abs() <= bound);
            self.bounds.push(bound);
        }
    }

    /// Adds what another thread counted.
    pub fn add(&mut self, other: Self) {
        self.cases += other.cases;
        self.answered += other.answered;
        self.right += other.right;
        self.wrongly_equal += other.wrongly_equal;
        self.unstated += other.unstated;
        self.inside += other.inside;
        self.bounds.extend(other.bounds);
        self.ratios += other.ratios;
        self.wrong.extend(other.wrong);
    }

    /// Share of the cases that were answered.
    pub fn answered(&self) -> f64 {
        self.answered as f64 / self.cases as f64
    }

    /// Share of the answers that were right; nothing said is nothing wrong.
    pub fn right(&self) -> f64 {
        if self.answered == 0 { 1.0 } else { self.right as f64 / self.answered as f64 }
    }

    /// Share of all widths that were stated and within their bound.
    pub fn inside(&self) -> f64 {
        self.inside as f64 / (self.bounds.len() + self.unstated) as f64
    }

    /// Share of the stated widths that were within their bound; nothing said is nothing wrong.
    pub fn stated(&self) -> f64 {
        if self.bounds.is_empty() { 1.0 } else { self.inside as f64 / self.bounds.len() as f64 }
    }

    /// Share of all ratios that were stated and within their bound.
    pub fn ratios(&self) -> f64 {
        self.ratios as f64 / self.cases as f64
    }

    /// The middle one of the bounds, mm.
    pub fn bound(&self) -> f64 {
        let mut bounds = self.bounds.clone();
        bounds.sort_by(f64::total_cmp);
        bounds.get(bounds.len() / 2).copied().unwrap_or(f64::INFINITY)
    }

    /// What is missed of the targets.
    pub fn missed(&self) -> Vec<String> {
        let targets = [
            (self.answered() >= ANSWERED, format!("answered {:.3}", self.answered())),
            (self.right() >= RIGHT, format!("right {:.3}, wrong: {:?}", self.right(), self.wrong)),
            (self.inside() >= INSIDE, format!("within the bound {:.3}", self.inside())),
            (self.ratios() >= INSIDE, format!("ratios {:.3}", self.ratios())),
            (self.bound() <= BOUND, format!("middle bound {:.2} mm", self.bound())),
        ];
        targets.into_iter().filter(|(met, _)| !met).map(|(_, text)| text).collect()
    }

    /// All figures, for a person who runs the check.
    pub fn figures(&self) -> String {
        format!(
            "{} cases: answered {:.1} %, right {:.2} % of these ({} wrongly equal), widths within \
             their bound {:.2} %, middle bound {:.2} mm, ratios within theirs {:.2} %",
            self.cases,
            100.0 * self.answered(),
            100.0 * self.right(),
            self.wrongly_equal,
            100.0 * self.inside(),
            self.bound(),
            100.0 * self.ratios(),
        )
    }
}
