//! What is drawn on a photo, as data beside it: the pixels stay as they were taken.

use serde::Serialize;
use serde_json::Value;

use crate::fields::{FieldError, Fields};
use crate::words::Message;

/// The most marks on one photo.
const MOST_MARKS: usize = 50;
/// The longest caption, characters.
const LONGEST_CAPTION: usize = 80;
/// The shortest arrow and the smallest box, as a share of the picture: less cannot be seen or touched.
const LEAST: f64 = 0.01;

/// What a mark looks like.
#[derive(Clone, Copy, PartialEq, Eq)]
enum Shape {
    Pin,
    Arrow,
    Box,
}

impl Shape {
    const IDS: [&str; 3] = ["pin", "arrow", "box"];

    fn of(id: &str) -> Option<Self> {
        match id {
            "pin" => Some(Self::Pin),
            "arrow" => Some(Self::Arrow),
            "box" => Some(Self::Box),
            _ => None,
        }
    }
}

/// A mark. Places are shares of the picture's width and height, from its upper left corner.
#[derive(Clone, Debug, PartialEq, Serialize, ts_rs::TS)]
#[serde(tag = "shape", rename_all = "snake_case")]
pub enum Mark {
    /// A numbered pin.
    Pin {
        /// From the left.
        x: f64,
        /// From the top.
        y: f64,
        /// What it says; may be empty.
        caption: String,
    },
    /// An arrow.
    Arrow {
        /// Its tail, from the left.
        x1: f64,
        /// Its tail, from the top.
        y1: f64,
        /// Its head, from the left.
        x2: f64,
        /// Its head, from the top.
        y2: f64,
        /// What it says; may be empty.
        caption: String,
    },
    /// A box.
    Box {
        /// One corner, from the left.
        x1: f64,
        /// One corner, from the top.
        y1: f64,
        /// The opposite corner, from the left.
        x2: f64,
        /// The opposite corner, from the top.
        y2: f64,
        /// What it says; may be empty.
        caption: String,
    },
}

/// Reads a list of marks.
///
/// # Errors
/// Names the field of the mark and what it takes.
pub fn read_marks(list: Value) -> Result<Vec<Mark>, FieldError> {
    let too_many = || {
        FieldError::new("marks", Message::new("takes-marks").text("most", MOST_MARKS.to_string()))
    };
    match list {
        Value::Array(list) if list.len() <= MOST_MARKS => {
            list.into_iter().enumerate().map(|(place, mark)| read_mark(place, mark)).collect()
        }
        _ => Err(too_many()),
    }
}

fn read_mark(place: usize, mark: Value) -> Result<Mark, FieldError> {
    let path = format!("marks.{place}");
    let mut fields = Fields::of(mark, &path)?;
    let shape = fields.id("shape", &Shape::IDS, Shape::of)?;
    let shape = fields.required("shape", shape)?;
    let caption = read_caption(&mut fields)?;
    let mut share = |key: &str| -> Result<f64, FieldError> {
        let given = fields.number(key, 0.0..=1.0)?;
        fields.required(key, given)
    };
    let mark = match shape {
        Shape::Pin => Mark::Pin { x: share("x")?, y: share("y")?, caption },
        Shape::Arrow | Shape::Box => {
            let [x1, y1, x2, y2] = [share("x1")?, share("y1")?, share("x2")?, share("y2")?];
            if (x2 - x1).abs().max((y2 - y1).abs()) < LEAST {
                return Err(FieldError::new(path, Message::new("takes-two-places")));
            }
            if shape == Shape::Arrow {
                Mark::Arrow { x1, y1, x2, y2, caption }
            } else {
                Mark::Box { x1, y1, x2, y2, caption }
            }
        }
    };
    let known = ["shape", "caption", "x", "y", "x1", "y1", "x2", "y2"];
    fields.finish(&known)?;
    Ok(mark)
}

fn read_caption(fields: &mut Fields) -> Result<String, FieldError> {
    let too_long = |fields: &Fields| {
        let most = LONGEST_CAPTION.to_string();
        FieldError::new(fields.path("caption"), Message::new("takes-short-text").text("high", most))
    };
    match fields.take("caption") {
        None => Ok(String::new()),
        Some(Value::String(text)) if text.chars().count() <= LONGEST_CAPTION => {
            Ok(text.trim().to_owned())
        }
        Some(_) => Err(too_long(fields)),
    }
}

#[cfg(test)]
mod tests {
    use serde_json::{Value, json};

    use super::{Mark, read_marks};

    fn field(list: Value) -> String {
        read_marks(list).expect_err("refused").field
    }

    #[test]
    fn what_is_kept_is_read_back_the_same() {
        let list = json!([
            {"shape": "pin", "x": 0.25, "y": 1.0, "caption": "bare screw"},
            {"shape": "arrow", "x1": 0.0, "y1": 0.0, "x2": 0.5, "y2": 0.5, "caption": ""},
            {"shape": "box", "x1": 0.1, "y1": 0.2, "x2": 0.3, "y2": 0.4, "caption": "cut wire"},
        ]);
        let marks = read_marks(list.clone()).expect("marks");
        assert_eq!(marks.len(), 3);
        assert_eq!(json!(marks), list);
    }

    #[test]
    fn a_caption_may_be_left_out() {
        let marks = read_marks(json!([{"shape": "pin", "x": 0, "y": 0}])).expect("a pin");
        assert_eq!(marks, [Mark::Pin { x: 0.0, y: 0.0, caption: String::new() }]);
    }

    #[test]
    fn what_is_no_mark_is_refused_by_its_field() {
        assert_eq!(field(json!({})), "marks");
        let pin = json!({"shape": "pin", "x": 0.5, "y": 0.5});
        assert_eq!(field(json!(vec![pin; 51])), "marks");
        assert_eq!(field(json!([{"shape": "star", "x": 0, "y": 0}])), "marks.0.shape");
        assert_eq!(field(json!([{"shape": "pin", "x": 1.01, "y": 0}])), "marks.0.x");
        assert_eq!(field(json!([{"shape": "pin", "x": 0.5}])), "marks.0.y");
        let nothing = json!({"shape": "arrow", "x1": 0.5, "y1": 0.5, "x2": 0.5, "y2": 0.505});
        assert_eq!(field(json!([nothing])), "marks.0");
        let long = json!({"shape": "pin", "x": 0, "y": 0, "caption": "a".repeat(81)});
        assert_eq!(field(json!([long])), "marks.0.caption");
        assert_eq!(field(json!([{"shape": "pin", "x": 0, "y": 0, "hue": 3}])), "marks.0.hue");
    }
}
