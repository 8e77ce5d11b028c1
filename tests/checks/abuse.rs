//! What no screen sends: wrong types, missing and foreign arguments, texts of a megabyte, the wrong order,
//! several commands at once, and texts that mean something to a database, a page, a printer or a spreadsheet.
//!
//! Every command that the app's shell has is tried, by the shell's own list, through the bridge that stands for
//! the shell. Each is answered with a view or with a refusal a person can read, never fails from inside, and
//! costs nothing that was acknowledged before. A text comes back as the text it is.

#[path = "abuse/answers.rs"]
mod answers;
#[path = "abuse/commands.rs"]
mod commands;
#[path = "abuse/every_command.rs"]
mod every_command;
#[path = "abuse/out_of_order.rs"]
mod out_of_order;
#[path = "abuse/papers.rs"]
mod papers;
#[path = "abuse/samples.rs"]
mod samples;
#[path = "abuse/searches.rs"]
mod searches;
#[path = "abuse/stage.rs"]
mod stage;
#[path = "abuse/texts.rs"]
mod texts;
#[path = "abuse/together.rs"]
mod together;
#[path = "abuse/typed.rs"]
mod typed;
#[path = "abuse/values.rs"]
mod values;
