//! What repairs come to, in words.

use crate::inspection::{fault_words, worst_state_sentence};
use crate::remedy::{Cut, Modification, Refusal, Stack, Standing, cost_of};
use crate::supply::Feed;
use crate::words::{Message, Words, milliamperes, seconds};

/// Says what repairs come to, on a feed.
pub struct RemedyWords<'a> {
    /// The words.
    pub words: &'a Words,
    /// What the unit is plugged into.
    pub feed: Feed,
}

impl RemedyWords<'_> {
    /// What a modification is called.
    pub fn name(&self, modification: Modification) -> String {
        self.words.say(&name(modification))
    }

    /// What it changes.
    pub fn does(&self, modification: Modification) -> String {
        self.words.say(&Message::new(format!("remedy-{}-does", modification.id())))
    }

    /// What it does not do.
    pub fn does_not(&self, modification: Modification) -> String {
        self.words.say(&Message::new(format!("remedy-{}-not", modification.id())))
    }

    /// Why it is not offered.
    pub fn refusal(&self, refusal: Refusal) -> String {
        self.words.say(&Message::new(format!("refusal-{}", refusal.id())))
    }

    /// Minutes and parts, as rough as they are.
    pub fn cost(&self, modification: Modification) -> String {
        let cost = cost_of(modification);
        self.cost_of(cost.minutes, cost.price)
    }

    fn cost_of(&self, minutes: f64, price: f64) -> String {
        let text = Message::new("remedy-cost")
            .text("minutes", format!("{minutes:.0}"))
            .text("price", format!("{price:.0}"));
        self.words.say(&text)
    }

    /// Where a unit stands, in a line: class, worst current, current with no fault.
    pub fn line(&self, standing: &Standing) -> String {
        let class = Message::new(format!("class-{}", standing.class.id()));
        let text = Message::new("standing-line")
            .message("class", class)
            .text("worst", milliamperes(standing.worst_ma()))
            .text("found", milliamperes(standing.as_found_ma));
        self.words.say(&text)
    }

    /// Where a unit stands, in sentences: the worst case, the faults that remain, what trips.
    pub fn sentences(&self, standing: &Standing) -> Vec<String> {
        let on_earth = standing.line_on_earth.then(|| Message::new("grid-line-on-earth"));
        let worst = worst_state_sentence(&standing.worst, self.feed).map(|state| {
            Message::new("standing-worst")
                .message("state", state)
                .text("current", milliamperes(standing.worst.milliamperes))
        });
        let sentences = on_earth.into_iter().chain(worst).chain(standing.cut.map(cut));
        let mut said: Vec<String> = sentences.map(|one| self.words.say(&one)).collect();
        said.extend(self.remaining(standing));
        said
    }

    /// The faults that remain, each with what it is called.
    pub fn faults(&self, standing: &Standing) -> Vec<String> {
        standing.remaining.iter().map(|set| self.words.say(&fault_words(*set))).collect()
    }

    fn remaining(&self, standing: &Standing) -> Option<String> {
        let named: Vec<Message> = standing.remaining.iter().map(|set| fault_words(*set)).collect();
        let id = match standing.worst.margin {
            1 => "standing-remaining",
            _ => "standing-remaining-pairs",
        };
        (!named.is_empty()).then(|| self.words.say(&Message::new(id).list("faults", named)))
    }

    /// A stack in a line: its steps and what it costs.
    pub fn stack(&self, stack: &Stack) -> String {
        if stack.steps.is_empty() {
            return self.words.say_id("stack-none");
        }
        let steps = stack.steps.iter().map(|step| name(*step)).collect();
        let text = Message::new("stack-line")
            .list("steps", steps)
            .text("cost", self.cost_of(stack.minutes, stack.price));
        self.words.say(&text)
    }

    /// The steps of a stack that make something worse, each in a sentence.
    pub fn worse(&self, stack: &Stack) -> Vec<String> {
        let steps = stack.worse.iter().filter_map(|place| stack.steps.get(*place));
        let say = |step: &Modification| {
            self.words.say(&Message::new("stack-worse").message("step", name(*step)))
        };
        steps.map(say).collect()
    }
}

/// What a modification is called.
pub(super) fn name(modification: Modification) -> Message {
    Message::new(format!("remedy-{}", modification.id()))
}

/// What the device in the outlet makes of the worst current.
fn cut(cut: Cut) -> Message {
    let device = Message::new(format!("device-{}", cut.device.id()));
    match (cut.seconds, cut.blind) {
        (Some(longest), _) => {
            Message::new("device-trips").message("device", device).text("time", seconds(longest))
        }
        (None, Some(blind)) => Message::new("device-does-not-trip")
            .message("device", device)
            .message("why", Message::new(format!("blind-{}", blind.id()))),
        (None, None) => Message::new("device-does-not-trip")
            .message("device", device)
            .message("why", Message::new("blind-too_little")),
    }
}
