//! Every command of the shell with every argument wrong in every way.

use coldchassis_tests::bridge::Desk;
use coldchassis_tests::seeds::on_all_threads;
use serde_json::{Value, json};
use uuid::Uuid;

use super::answers::{answer, done, is_done, refused};
use super::commands::{Command, all};
use super::samples::sample;
use super::stage::Stage;
use super::values::{of_kind, spoilt};

/// What was tried and what it came to.
#[derive(Default)]
struct Tally {
    calls: u64,
    done: u64,
    lines: Vec<String>,
}

/// A command that is tried on a record of its own.
struct Trial<'a> {
    command: &'a Command,
    stage: Stage,
    sample: Value,
    /// Units that were acknowledged.
    units: Vec<Uuid>,
    calls: u64,
    done: u64,
}

#[test]
fn every_command_refuses_what_it_cannot_take_and_loses_nothing() {
    let commands = all();
    let count = commands.len() as u64;
    let tally = on_all_threads(
        count,
        |tally: &mut Tally, place| {
            let command = &commands[usize::try_from(place).expect("few commands")];
            let trial = Trial::of(command).run();
            tally.calls += trial.0;
            tally.done += trial.1;
            tally.lines.push(format!("{}: {} calls, {} done", command.name, trial.0, trial.1));
        },
        |tally, other| {
            tally.calls += other.calls;
            tally.done += other.done;
            tally.lines.extend(other.lines);
        },
    );
    let mut lines = tally.lines;
    lines.sort();
    println!("{}", lines.join("\n"));
    let refused = tally.calls - tally.done;
    println!("{count} commands, {} calls, {} done, {refused} refused", tally.calls, tally.done);
    assert!(tally.calls > 3000 && refused > tally.calls / 2, "too little was tried");
}

#[test]
fn what_is_no_command_is_refused() {
    let stage = Stage::new();
    for command in
        ["", "drop_table", "Answer", "answer ", "../answer", "answer\0", "plugin:fs|read"]
    {
        refused(&stage.desk, command, &json!({"inspection": stage.ids.inspection}));
    }
    stage.close_whole(&[]);
}

impl<'a> Trial<'a> {
    fn of(command: &'a Command) -> Self {
        let stage = Stage::new();
        let sample = sample(&stage, &command.name);
        Self { command, stage, sample, units: Vec::new(), calls: 0, done: 0 }
    }

    fn desk(&self) -> &Desk {
        &self.stage.desk
    }

    /// Tries everything; how many calls there were, and how many of them were done.
    fn run(mut self) -> (u64, u64) {
        let name = &self.command.name;
        let named = self.sample.as_object().expect("arguments").keys();
        assert!(
            named.eq(sorted(self.command).iter()),
            "the sample of {name} names other arguments than the shell"
        );
        let view = done(self.desk(), name, &self.sample);
        self.count(&json!({"ok": view}));
        for arguments in [json!(null), json!([]), json!("x"), json!(1)] {
            self.any(&arguments);
        }
        let mut more = self.sample.clone();
        more["more"] = json!(1);
        self.any(&more);
        for argument in &self.command.arguments {
            self.without(&argument.name, &argument.kind);
            for wrong in of_kind(&self.stage, &argument.name, &argument.kind) {
                let with = self.with(&argument.name, wrong.value);
                if wrong.is_refused {
                    refused(self.desk(), name, &with);
                    self.calls += 1;
                } else {
                    self.any(&with);
                }
            }
            let inside = spoilt(&self.sample[argument.name.as_str()]);
            for value in inside {
                let with = self.with(&argument.name, value);
                self.any(&with);
            }
        }
        let (calls, done) = (self.calls, self.done);
        self.stage.close_whole(&self.units);
        (calls, done)
    }

    fn with(&self, name: &str, value: Value) -> Value {
        let mut with = self.sample.clone();
        with[name] = value;
        with
    }

    fn without(&mut self, name: &str, kind: &str) {
        let mut fewer = self.sample.clone();
        fewer.as_object_mut().expect("arguments").remove(name);
        if kind.starts_with("Option<") {
            self.any(&fewer);
        } else {
            refused(self.desk(), &self.command.name, &fewer);
            self.calls += 1;
        }
    }

    /// Whatever it comes to, it is answered.
    fn any(&mut self, arguments: &Value) {
        let answer = answer(self.desk(), &self.command.name, arguments);
        self.count(&answer);
    }

    fn count(&mut self, answer: &Value) {
        self.calls += 1;
        self.done += u64::from(is_done(answer));
        if self.command.name == "create_unit" && is_done(answer) {
            let unit = answer["ok"]["unit"]["id"].as_str().and_then(|id| id.parse().ok());
            self.units.push(unit.expect("the unit's id"));
        }
    }
}

fn sorted(command: &Command) -> Vec<String> {
    let mut names: Vec<String> = command.arguments.iter().map(|one| one.name.clone()).collect();
    names.sort();
    names
}
