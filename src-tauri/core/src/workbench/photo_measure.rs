//! What a photo with a bank card beside it measures, in words. Nothing of it is stored, and what it says of
//! blades is only ever offered.

use serde::Serialize;
use serde_json::Value;
use uuid::Uuid;

use super::error::Problem;
use super::question_views::answer_words;
use super::session::Workbench;
use crate::fields::{FieldError, Fields, id_enum};
use crate::inspection::Question;
use crate::photo::measure::{
    Above, BladeReading, CardView, Grey, Length, MeasureError, Point, Says, Spot, Why, read_blades,
    snap,
};
use crate::photo::read_grey;
use crate::words::{Message, Words, millimetres, ratio};

id_enum! {
    /// What the widths of two blades say.
    pub enum BladesSay {
        /// One width: the plug goes in both ways round.
        Equal = "equal",
        /// One is wider.
        Polarised = "polarised",
        /// It cannot be told.
        CannotTell = "cannot_tell",
    }
}

/// An answer that may be given for what was measured; nobody has given it yet.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, ts_rs::TS)]
pub struct OfferedAnswer {
    /// The question's id.
    pub question: &'static str,
    /// The answer's id.
    pub answer: &'static str,
    /// The answer in words.
    pub text: String,
}

/// What was read of two blades.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, ts_rs::TS)]
pub struct BladesView {
    /// What they are.
    pub says: BladesSay,
    /// The same in a sentence, with why it cannot be told.
    pub sentence: String,
    /// The greater width over the smaller, with its bound.
    pub ratio: String,
    /// The widths, with their bounds.
    pub widths: [String; 2],
    /// The answer that fits.
    pub answer: Option<OfferedAnswer>,
}

/// What a photo measures.
#[derive(Clone, Debug, Default, PartialEq, Eq, Serialize, ts_rs::TS)]
pub struct MeasureView {
    /// Why the four points are not the corners of a card.
    pub card_trouble: Option<String>,
    /// The length between two points, with its bound.
    pub length: Option<String>,
    /// What the bound counts, or why there is no length.
    pub length_note: Option<String>,
    /// What two blades are.
    pub blades: Option<BladesView>,
    /// What to keep in mind.
    pub notes: Vec<String>,
}

/// Where two points that are measured may be: on the card's own height up to the tips of a plug's blades.
const ANYTHING: Above = Above { least_mm: 0.0, ..Above::BLADES };

const KEYS: &[&str] = &["card", "length", "blades"];

type Ends = [Point; 2];

/// What is asked of a photo, in px.
struct Ask {
    card: [Point; 4],
    length: Option<Ends>,
    blades: Option<[Ends; 2]>,
}

impl Workbench {
    /// Measures on a photo: `ask` is `{"card": […], "length": …, "blades": …}`, points as `[x, y]` in shares of the
    /// photo's width and height.
    ///
    /// # Errors
    /// There is no such photo, it cannot be read, or a field of what is asked is not as it must be. Points that
    /// measure nothing are no error: the view says why.
    pub fn measure_photo(
        &self,
        inspection: Uuid,
        photo: Uuid,
        ask: Value,
    ) -> Result<MeasureView, Problem> {
        let found = self.photo(inspection, photo)?;
        let size = [f64::from(found.width), f64::from(found.height)];
        let ask = read_ask(ask, size)?;
        let bytes = self.photo_bytes(&found.sha256, false)?;
        let picture = read_grey(&bytes)?;
        let says = Measures { words: self.words(), size, picture: &picture };
        Ok(says.view(&ask))
    }
}

struct Measures<'a> {
    words: &'a Words,
    size: [f64; 2],
    picture: &'a image::GrayImage,
}

impl Measures<'_> {
    fn view(&self, ask: &Ask) -> MeasureView {
        let notes = vec![self.words.say_id("measure-unplugged"), self.words.say_id("measure-hint")];
        let card = match CardView::new(self.size, ask.card) {
            Ok(card) => card,
            Err(error) => {
                let card_trouble = Some(self.trouble(error));
                return MeasureView { card_trouble, notes, ..MeasureView::default() };
            }
        };
        let [length, length_note] = match ask.length.map(|ends| self.length(&card, ends)) {
            None => [None, None],
            Some(Ok(length)) => {
                [Some(self.with_bound(length)), Some(self.words.say_id("measure-counts"))]
            }
            Some(Err(error)) => [None, Some(self.trouble(error))],
        };
        let blades = ask.blades.map(|blades| self.blades(&card, blades));
        let offered = blades.as_ref().is_some_and(|blades| blades.answer.is_some());
        let third = offered.then(|| self.words.say_id("measure-third-pin"));
        let notes = third.into_iter().chain(notes).collect();
        MeasureView { card_trouble: None, length, length_note, blades, notes }
    }

    fn length(&self, card: &CardView, ends: Ends) -> Result<Length, MeasureError> {
        card.length(self.spots(ends), ANYTHING)
    }

    fn blades(&self, card: &CardView, blades: [Ends; 2]) -> BladesView {
        match read_blades(card, blades.map(|ends| self.spots(ends)), Above::BLADES) {
            Ok(reading) => self.read(&reading),
            Err(error) => BladesView {
                says: BladesSay::CannotTell,
                sentence: self.trouble(error),
                ratio: String::new(),
                widths: [String::new(), String::new()],
                answer: None,
            },
        }
    }

    fn read(&self, reading: &BladeReading) -> BladesView {
        let (says, sentence, answer) = match reading.says {
            Says::Equal => (BladesSay::Equal, "blades-equal", Some("two_equal_blades")),
            Says::Polarised { wider } => {
                let which = if wider == 0 { "blades-first-wider" } else { "blades-second-wider" };
                (BladesSay::Polarised, which, Some("two_polarised_blades"))
            }
            Says::CannotTell(why) => (BladesSay::CannotTell, why_not(why), None),
        };
        let question = Question::Plug.id();
        BladesView {
            says,
            sentence: self.words.say_id(sentence),
            ratio: self.words.write(&ratio(reading.ratio, reading.ratio_bound)),
            widths: reading.widths.map(|width| self.with_bound(width)),
            answer: answer.map(|answer| OfferedAnswer {
                question,
                answer,
                text: answer_words(question, answer, self.words),
            }),
        }
    }

    /// Points as a finger left them, drawn to the edges beside them where there are any.
    fn spots(&self, ends: Ends) -> [Spot; 2] {
        match Grey::new([0, 0], self.picture.width(), self.picture.as_raw()) {
            Ok(grey) => snap(&grey, ends),
            Err(_) => ends.map(Spot::tapped),
        }
    }

    fn with_bound(&self, length: Length) -> String {
        self.words.write(&millimetres(length.millimetres, length.bound_mm))
    }

    fn trouble(&self, error: MeasureError) -> String {
        self.words.say_id(match error {
            MeasureError::Size | MeasureError::Grey => "measure-trouble-photo",
            MeasureError::CornerOutside { .. } => "measure-trouble-outside",
            MeasureError::CornersCrossed => "measure-trouble-crossed",
            MeasureError::CardTooSmall => "measure-trouble-small",
            MeasureError::NotACard => "measure-trouble-card",
            MeasureError::LongSideUnclear => "measure-trouble-long",
            MeasureError::EndOutside => "measure-trouble-end",
            MeasureError::EndsTooClose => "measure-trouble-close",
            MeasureError::Height => "measure-trouble-near",
        })
    }
}

const fn why_not(why: Why) -> &'static str {
    match why {
        Why::TooRough => "blades-too-rough",
        Why::NeitherRatio => "blades-neither",
        Why::OtherWidths => "blades-other-widths",
        Why::OtherPlaces => "blades-other-places",
    }
}

fn read_ask(ask: Value, size: [f64; 2]) -> Result<Ask, FieldError> {
    let mut fields = Fields::of(ask, "measure")?;
    let card = fields.take("card");
    let card = fields.required("card", card)?;
    let ask = Ask {
        card: points(&card, "measure.card", size)?,
        length: given(fields.take("length"))
            .map(|ends| points(&ends, "measure.length", size))
            .transpose()?,
        blades: given(fields.take("blades")).map(|blades| pairs(&blades, size)).transpose()?,
    };
    fields.finish(KEYS)?;
    Ok(ask)
}

fn given(value: Option<Value>) -> Option<Value> {
    value.filter(|value| !value.is_null())
}

fn pairs(value: &Value, size: [f64; 2]) -> Result<[Ends; 2], FieldError> {
    let read = |value: &Value| points::<2>(value, "measure.blades", size);
    let blades: Option<Vec<Ends>> =
        value.as_array().map(|list| list.iter().map(read).collect()).transpose()?;
    let pair = blades.and_then(|blades| blades.try_into().ok());
    pair.ok_or_else(|| takes_points("measure.blades", 4))
}

fn points<const N: usize>(
    value: &Value,
    field: &str,
    size: [f64; 2],
) -> Result<[Point; N], FieldError> {
    let share = |value: &Value| value.as_f64().filter(|share| (0.0..=1.0).contains(share));
    let point = |value: &Value| match value.as_array()?.as_slice() {
        [x, y] => Some(Point::new(share(x)? * size[0], share(y)? * size[1])),
        _ => None,
    };
    let list: Option<Vec<Point>> =
        value.as_array().and_then(|list| list.iter().map(point).collect());
    let points = list.and_then(|list| list.try_into().ok());
    points.ok_or_else(|| takes_points(field, N))
}

fn takes_points(field: &str, count: usize) -> FieldError {
    FieldError::new(field, Message::new("takes-points").text("count", count.to_string()))
}
