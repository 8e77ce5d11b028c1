//! Parts to buy, in words.

use super::repair_views::PartNeedView;
use crate::remedy::{ClassY, CordSize, Fuse, FuseStandard, PartNeed, Size, TransformerSize};
use crate::words::{
    Argument, Message, Words, amperes, farads, milliamperes, square_millimetres, volt_amperes,
};

/// A part with its size and how that was come by.
pub(super) fn part_view(need: &PartNeed, words: &Words) -> PartNeedView {
    let (size, notes) = match &need.size {
        Size::None => (None, Vec::new()),
        Size::Transformer(size, by_plate) => transformer(*size, *by_plate),
        Size::Fuse(size) => fuse(size),
        Size::ClassY(size, limit_ma) => class_y(size, *limit_ma),
        Size::Cord(cord, conductors, colours) => {
            let size = Message::new("part-size-cord")
                .text("size", cord_size(cord))
                .text("count", conductors.to_string())
                .text("current", amperes(cord.amperes));
            let colours = Message::new(if *conductors > 2 {
                "part-note-colours-three"
            } else {
                "part-note-colours-two"
            })
            .message("line", Message::new(format!("wire-line-{}", colours.id())))
            .message("neutral", Message::new(format!("wire-neutral-{}", colours.id())))
            .message("earth", Message::new(format!("wire-earth-{}", colours.id())));
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

/// A metric cord by its section, any other as it is printed on it.
fn cord_size(cord: &CordSize) -> Argument {
    if cord.size.ends_with("mm2") {
        square_millimetres(cord.mm2).into()
    } else {
        cord.size.clone().into()
    }
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
