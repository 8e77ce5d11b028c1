//! Lays what repairs change out for a terminal.

use coldchassis_core::remedy::{Offer, Setup, Stack, Standing, Study};
use coldchassis_core::words::{Message, Words};
use coldchassis_core::workbench::RemedyWords;

use crate::print::{paragraph, wrapped};

/// What stands at the head of every repair.
const CAUTIONS: [&str; 3] = ["repair-caution-codes", "repair-caution-who", "repair-caution-unplug"];
/// What stands at its end.
const LAST: [&str; 2] = ["repair-caution-when-not", "repair-caution-original"];

/// The whole study as text.
pub fn page(setup: &Setup, study: &Study, words: &Words) -> String {
    let say = RemedyWords { words, feed: setup.supply.feed };
    let mut lines = Vec::new();
    lines.extend(CAUTIONS.iter().flat_map(|id| wrapped(&words.say_id(id), "! ")));
    let now = Message::new("remedies-now").text("standing", say.line(&study.before));
    lines.push(paragraph(&words.say(&now)));
    lines.extend(sentences(&say, &study.before));
    let over = Message::new("remedies-over").text("count", setup.set.len().to_string());
    lines.extend(wrapped(&words.say(&over), "  "));
    lines.push(String::new());
    lines.extend(stack(&say, words, "stack-shortest", study.shortest.as_ref()));
    lines.extend(stack(&say, words, "stack-in-unit", study.in_unit.as_ref()));
    for offer in &study.offers {
        lines.push(String::new());
        lines.extend(one(&say, words, offer));
    }
    lines.push(String::new());
    lines.extend(LAST.iter().flat_map(|id| wrapped(&words.say_id(id), "! ")));
    lines.join("\n")
}

fn sentences(say: &RemedyWords<'_>, standing: &Standing) -> Vec<String> {
    say.sentences(standing).iter().flat_map(|sentence| wrapped(sentence, "    ")).collect()
}

fn stack(
    say: &RemedyWords<'_>,
    words: &Words,
    heading: &'static str,
    stack: Option<&Stack>,
) -> Vec<String> {
    let text = stack.map_or_else(|| words.say_id("stack-no-way"), |stack| say.stack(stack));
    let mut lines = wrapped(&format!("{}: {text}", words.say_id(heading)), "* ");
    let worse = stack.map(|stack| say.worse(stack)).unwrap_or_default();
    lines.extend(worse.iter().flat_map(|sentence| wrapped(sentence, "  ! ")));
    lines
}

fn one(say: &RemedyWords<'_>, words: &Words, offer: &Offer) -> Vec<String> {
    let cost = say.cost(offer.modification);
    let mut lines = wrapped(&format!("{} ({cost})", say.name(offer.modification)), "- ");
    let offered = match &offer.result {
        Ok(offered) => offered,
        Err(refusal) => {
            let why = Message::new("remedies-not-offered").text("why", say.refusal(*refusal));
            lines.extend(wrapped(&words.say(&why), "  "));
            return lines;
        }
    };
    lines.extend(wrapped(&say.does(offer.modification), "  "));
    let after = Message::new("remedies-after").text("standing", say.line(&offered.over));
    lines.extend(wrapped(&words.say(&after), "  "));
    lines.extend(sentences(say, &offered.over));
    if let Some(worst) = &offered.worst {
        let of_worst = Message::new("remedies-after-worst").text("standing", say.line(worst));
        lines.extend(wrapped(&words.say(&of_worst), "  "));
    }
    let notes = [(offered.is_worse, "remedies-worse"), (!offered.changes, "remedies-no-change")];
    let notes = notes.iter().filter(|(is_so, _)| *is_so).map(|(_, id)| words.say_id(id));
    lines.extend(notes.flat_map(|note| wrapped(&note, "  ! ")));
    lines.extend(wrapped(&say.does_not(offer.modification), "  "));
    lines
}
