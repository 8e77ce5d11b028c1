//! Puts the help of the commands into the language of whoever asks for it.

use clap::{Arg, Command};
use coldchassis_core::words::{Message, Words};

/// The command with its help in words. What it takes stays the same.
pub fn spoken(mut command: Command, words: &Words) -> Command {
    // Only now the flags and the command for help are there too.
    command.build();
    let names: Vec<String> =
        command.get_subcommands().map(|one| one.get_name().to_owned()).collect();
    let mut command = named(command, "coldchassis", words);
    for name in names {
        command = command.mut_subcommand(&name, |sub| named(sub, &name, words));
    }
    command
}

fn named(command: Command, name: &str, words: &Words) -> Command {
    let usage = words.say_id("help-usage");
    command
        .about(words.say_id(&format!("help-{name}")))
        .help_template(format!("{{about-with-newline}}\n{usage}: {{usage}}\n\n{{all-args}}"))
        .subcommand_help_heading(words.say_id("help-commands"))
        .mut_args(|argument| explained(argument, name, words))
}

fn explained(argument: Arg, command: &str, words: &Words) -> Arg {
    let id = argument.get_id().as_str().to_owned();
    let own = Message::new(format!("help-{command}-{id}"));
    let common = || words.find(&Message::new(format!("help-any-{id}")));
    let Some(text) = words.find(&own).or_else(common) else { return argument };
    // A flag is off without being said so.
    let values =
        argument.get_default_values().first().filter(|_| argument.get_action().takes_values());
    let usual = values.and_then(|value| value.to_str());
    let text = match usual.filter(|value| !value.is_empty()) {
        Some(value) => {
            let usual = words.say(&Message::new("help-default").text("value", value));
            format!("{text} {usual}")
        }
        None => text,
    };
    let heading = if argument.is_positional() { "help-arguments" } else { "help-options" };
    argument.help(text).hide_default_value(true).help_heading(words.say_id(heading))
}

#[cfg(test)]
#[expect(clippy::unwrap_used, reason = "a check may panic")]
mod tests {
    use clap::CommandFactory;
    use coldchassis_core::words::Words;

    use super::spoken;
    use crate::Arguments;

    fn help(locale: &str, path: &[&str]) -> String {
        let mut command = spoken(Arguments::command(), &Words::of(locale));
        let mut at = &mut command;
        for name in path {
            at = at.find_subcommand_mut(name).unwrap();
        }
        at.render_long_help().to_string()
    }

    #[test]
    fn every_command_and_option_is_explained_in_each_language() {
        for locale in Words::languages() {
            let words = Words::of(&locale);
            let command = spoken(Arguments::command(), &words);
            for sub in command.get_subcommands() {
                let about = sub.get_about().unwrap().to_string();
                assert!(!about.starts_with("help-"), "{locale}: {about}");
                for argument in sub.get_arguments().filter(|_| sub.get_name() != "help") {
                    assert!(argument.get_help().is_some(), "{locale}: {argument}");
                }
            }
        }
    }

    #[test]
    fn help_in_german_has_no_english_heading() {
        for path in [&[][..], &["assess"], &["exposure"], &["inspect"], &["heaters"]] {
            let text = help("de", path);
            for word in ["Usage", "Options", "Commands", "Arguments:", "default", "Print"] {
                assert!(!text.contains(word), "{path:?}: {word} in {text}");
            }
            assert!(text.contains("Aufruf: "), "{text}");
        }
    }

    #[test]
    fn a_usual_value_is_said() {
        assert!(help("en", &["exposure"]).contains("[default: dry]"));
        assert!(help("de", &["exposure"]).contains("[sonst: dry]"));
    }
}
