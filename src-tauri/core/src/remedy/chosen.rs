//! A stack of repairs that a person chose, as it is written down.

use serde_json::{Value, json};

use super::{Modification, figure};
use crate::fields::{FieldError, Fields};
use crate::words::Message;

/// The limits that class Y may be sized for, mA (limits.csv: 0.25 class II, 0.5 two-wire, 0.75 three-wire).
const LIMITS_MA: std::ops::RangeInclusive<f64> = 0.1..=0.75;

/// A stack that was chosen, and the limit that its capacitors are sized for.
#[derive(Clone, Debug, PartialEq)]
pub struct Chosen {
    /// The repairs, in the order in which they are done.
    pub stack: Vec<Modification>,
    /// The touch current that capacitors of class Y are sized for, mA, 0.1 to 0.75.
    pub limit_ma: f64,
}

impl Chosen {
    /// Nothing is chosen.
    pub fn none() -> Self {
        Self { stack: Vec::new(), limit_ma: figure("limit_default") }
    }

    /// Reads a stack: a list of ids, or an object with that list and a limit.
    ///
    /// # Errors
    /// Names the field and what it takes.
    pub fn read(value: Value) -> Result<Self, FieldError> {
        let mut chosen = Self::none();
        let list = match value {
            Value::Null => return Ok(chosen),
            Value::Array(list) => list,
            other => {
                let mut fields = Fields::of(other, "stack")?;
                if let Some(limit) = fields.number("limit_ma", LIMITS_MA)? {
                    chosen.limit_ma = limit;
                }
                let steps = fields.take("steps");
                fields.finish(&["steps", "limit_ma"])?;
                match steps {
                    Some(Value::Array(list)) => list,
                    _ => return Err(not_a_stack()),
                }
            }
        };
        for one in list {
            let known = one.as_str().and_then(Modification::of).ok_or_else(not_a_stack)?;
            chosen.stack.push(known);
        }
        Ok(chosen)
    }

    /// The limit that class Y of the stack is sized for, mA; nothing where none is fitted.
    pub fn class_y_ma(&self) -> Option<f64> {
        const FITTED: [Modification; 2] =
            [Modification::LineCapacitorClassY, Modification::NetworkClassY];
        FITTED.iter().any(|one| self.stack.contains(one)).then_some(self.limit_ma)
    }

    /// As it is written down, for [`Chosen::read`].
    pub fn kept(&self) -> Value {
        let steps: Vec<&str> = self.stack.iter().map(|step| step.id()).collect();
        json!({"steps": steps, "limit_ma": self.limit_ma})
    }
}

/// What a stack takes.
pub fn not_a_stack() -> FieldError {
    let ids = Modification::IDS.join(", ");
    FieldError::new("stack", Message::new("takes-list-of").text("ids", ids))
}
