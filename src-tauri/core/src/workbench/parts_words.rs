//! Parts to buy, in words.

use super::repair_views::{DropperView, PartNeedView};
use crate::inspection::Findings;
use crate::remedy::{
    ClassY, Fuse, FuseStandard, PartNeed, Size, TransformerSize, capacitor_dropper, diode_dropper,
    resistor_dropper,
};
use crate::words::{Message, Words, amperes, farads, milliamperes, ohms, volts, watts};

/// A part with its size and how that was come by.
pub(super) fn part_view(need: &PartNeed, words: &Words) -> PartNeedView {
    let (size, notes) = match &need.size {
        Size::None => (None, Vec::new()),
        Size::Transformer(size, by_plate) => transformer(*size, *by_plate),
        Size::Fuse(size) => fuse(size),
        Size::ClassY(size, limit_ma) => class_y(size, *limit_ma),
        Size::Cord(cord, conductors, colours) => {
            let size = Message::new("part-size-cord")
                .text("size", cord.size.clone())
                .text("count", conductors.to_string())
                .text("current", amperes(cord.amperes));
            let colours = Message::new(if *conductors > 2 {
                "part-note-colours-three"
            } else {
                "part-note-colours-two"
            })
            .text("line", colours.line.clone())
            .text("neutral", colours.neutral.clone())
            .text("earth", colours.earth.clone());
            (Some(size), vec![colours, Message::new("part-note-colours-old")])
        }
    };
    PartNeedView {
        kind: need.kind,
        name: words.say(&Message::new(format!("part-need-{}", need.kind.id()))),
        step: need.step,
        size: size.map(|size| words.say(&size)),
        notes: notes.iter().map(|note| words.say(note)).collect(),
    }
}

type Said = (Option<Message>, Vec<Message>);

fn volt_amperes(value: f64) -> String {
    format!("{value:.0}\u{a0}VA")
}

fn transformer(size: TransformerSize, by_plate: bool) -> Said {
    let text = match size.stock_va {
        Some(stock) => Message::new("part-size-transformer").text("stock", volt_amperes(stock)),
        None => Message::new("part-size-transformer-none"),
    };
    let how = Message::new(if by_plate { "part-note-by-plate" } else { "part-note-by-parts" });
    let needed = Message::new("part-note-needed").text("needed", volt_amperes(size.needed_va));
    (Some(text), vec![needed, how, Message::new("part-note-one-unit")])
}

fn fuse(fuse: &Fuse) -> Said {
    let Some(rating) = fuse.amperes else {
        return (Some(Message::new("part-size-fuse-none")), Vec::new());
    };
    let size = match fuse.standard {
        FuseStandard::Ul => Message::new("part-size-fuse-ul").text("rating", amperes(rating)),
        FuseStandard::Iec => Message::new("part-size-fuse-iec").text("rating", amperes(rating)),
    };
    let does = match fuse.standard {
        FuseStandard::Ul => Message::new("part-note-fuse-ul")
            .text("holds", amperes(fuse.holds_amperes))
            .text("opens", amperes(fuse.opens_amperes)),
        FuseStandard::Iec => Message::new("part-note-fuse-iec")
            .text("holds", amperes(fuse.holds_amperes))
            .text("opens", amperes(fuse.opens_amperes)),
    };
    let inrush = if fuse.rides_inrush { "part-note-fuse-fast" } else { "part-note-fuse-slow" };
    let inrush = Message::new(inrush);
    (Some(size), vec![does, inrush, Message::new("part-note-fuse-other")])
}

fn class_y(size: &ClassY, limit_ma: f64) -> Said {
    let Some(farad) = size.farad else {
        let none = Message::new("part-size-class_y-none").text("limit", milliamperes(limit_ma));
        return (Some(none), Vec::new());
    };
    let text = Message::new("part-size-class_y").text("value", farads(farad));
    let how = Message::new("part-note-class_y")
        .text("limit", milliamperes(limit_ma))
        .text("most", farads(size.most_farad))
        .text("leaks", milliamperes(size.leaks_ma));
    (Some(text), vec![how, Message::new("part-note-class_y-voltage")])
}

/// What may take up the volts that the heaters leave, by the list of tubes: a resistor, a capacitor, a diode.
pub(super) fn dropper_views(findings: &Findings, words: &Words) -> Vec<DropperView> {
    let Some(dropper) = findings.heaters().and_then(|heaters| heaters.dropper()) else {
        return Vec::new();
    };
    let (line, hertz) = (findings.supply.volts, findings.supply.hertz);
    let (sum, current) = (line - dropper.volts, dropper.volts / dropper.ohms);
    let view = |name: &'static str, size: Message, notes: Vec<Message>| DropperView {
        name: words.say_id(name),
        size: words.say(&size),
        notes: notes.iter().map(|note| words.say(note)).collect(),
    };
    let resistor = resistor_dropper(line, sum, current).map(|size| {
        let text = Message::new("dropper-resistor-size")
            .text("ohms", ohms(size.stock_ohms.unwrap_or(size.ohms)))
            .text("watts", watts(size.stock_watts.unwrap_or(2.0 * size.watts)));
        let exact = Message::new("dropper-resistor-note")
            .text("ohms", ohms(size.ohms))
            .text("watts", watts(size.watts));
        view("dropper-resistor", text, vec![exact])
    });
    let capacitor = capacitor_dropper(line, sum, current, hertz).map(|size| {
        let text = Message::new("dropper-capacitor-size")
            .text("farads", farads(size.farads))
            .text("volts", volts(size.volts));
        let inrush = Message::new("dropper-capacitor-note")
            .text("current", amperes(size.inrush_amperes));
        let bleeder = size
            .bleeder_ohms
            .map(|most| Message::new("dropper-capacitor-bleeder").text("ohms", ohms(most)));
        view("dropper-capacitor", text, std::iter::once(inrush).chain(bleeder).collect())
    });
    let diode = diode_dropper(line, sum, current).map(|size| {
        let text = Message::new("dropper-diode-size")
            .text("volts", volts(size.volts))
            .text("ohms", ohms(size.ohms));
        let direct =
            Message::new("dropper-diode-note").text("current", amperes(size.direct_amperes));
        view("dropper-diode", text, vec![direct])
    });
    resistor.into_iter().chain(capacitor).chain(diode).collect()
}
