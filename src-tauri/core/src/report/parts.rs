//! The parts of a document in reading order, for somebody who has it read out.

use krilla::tagging::{Identifier, ListNumbering, Node, TableHeaderScope, Tag, TagGroup, TagTree};

use super::page::Role;

/// The tree of tags: headings, paragraphs, lists, figures and tables.
pub(super) fn tree(parts: &[Role], content: Vec<Vec<Identifier>>) -> TagTree {
    let mut tree = TagTree::new();
    let mut parts = parts.iter().zip(content).peekable();
    while let Some((role, content)) = parts.next() {
        match role {
            Role::Cell { table, .. } => {
                let mut rows = vec![(0, row_with(role, content))];
                while let Some((next, content)) = parts.next_if(
                    |(next, _)| matches!(next, Role::Cell { table: of, .. } if of == table),
                ) {
                    add(&mut rows, next, content);
                }
                let mut group = TagGroup::new(Tag::Table);
                for (_, row) in rows {
                    group.push(row);
                }
                tree.push(group);
            }
            Role::Item => {
                let mut list = TagGroup::new(Tag::L(ListNumbering::Disc));
                list.push(item(content));
                while let Some((_, content)) = parts.next_if(|(next, _)| **next == Role::Item) {
                    list.push(item(content));
                }
                tree.push(list);
            }
            role => tree.push(leaf(role, content)),
        }
    }
    tree
}

fn leaf(role: &Role, content: Vec<Identifier>) -> TagGroup {
    let one = std::num::NonZeroU16::MIN;
    let two = one.saturating_add(1);
    let mut group = match role {
        Role::Title(title) => TagGroup::new(Tag::Hn(one, Some(title.clone()))),
        Role::Heading(title) => TagGroup::new(Tag::Hn(two, Some(title.clone()))),
        Role::Figure(says) => TagGroup::new(Tag::Figure(Some(says.clone()))),
        _ => TagGroup::new(Tag::P),
    };
    fill(&mut group, content);
    group
}

fn fill(group: &mut TagGroup, content: Vec<Identifier>) {
    for identifier in content {
        group.push(Node::Leaf(identifier));
    }
}

fn item(content: Vec<Identifier>) -> TagGroup {
    let mut body = TagGroup::new(Tag::LBody);
    fill(&mut body, content);
    let mut item = TagGroup::new(Tag::LI);
    item.push(body);
    item
}

fn cell(role: &Role, content: Vec<Identifier>) -> TagGroup {
    let names = matches!(role, Role::Cell { names: true, .. });
    let mut group = if names {
        TagGroup::new(Tag::TH(TableHeaderScope::Column))
    } else {
        TagGroup::new(Tag::TD)
    };
    fill(&mut group, content);
    group
}

fn row_with(role: &Role, content: Vec<Identifier>) -> TagGroup {
    let mut row = TagGroup::new(Tag::TR);
    row.push(cell(role, content));
    row
}

/// Adds a cell to the last row, or starts the next.
fn add(rows: &mut Vec<(usize, TagGroup)>, role: &Role, content: Vec<Identifier>) {
    let Role::Cell { row, .. } = role else { return };
    match rows.last_mut() {
        Some((number, last)) if number == row => last.push(cell(role, content)),
        _ => rows.push((*row, row_with(role, content))),
    }
}
