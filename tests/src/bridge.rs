//! The commands of the app over loopback HTTP, so that the very same screens run in a browser.
//!
//! It lives with the checks and never ships. One request, one command: `POST /api/<command>` with the
//! arguments as a JSON object; the answer is `{"ok": …}` or `{"problem": …}`, the problem with the
//! sentence a person reads. Everything else is a file of the built screens.

use std::path::{Path, PathBuf};
use std::sync::{Mutex, MutexGuard, PoisonError};
use std::time::Duration;

use coldchassis_core::workbench::{
    Problem, Workbench, look_at_bundle, presets, regions, save_text, take_in,
};
use serde::Serialize;
use serde::de::DeserializeOwned;
use serde_json::{Value, json};
use tiny_http::{Header, Method, Request, Response, Server};

/// The one workbench, used by one command at a time, as in the app; long work runs beside it there too.
pub struct Desk {
    bench: Mutex<Workbench>,
    given: PathBuf,
}

/// How long a request is waited for before something is done beside the window.
const BETWEEN: Duration = Duration::from_millis(20);

/// Serves until the process ends.
///
/// # Panics
/// When the port cannot be listened on, or a command fails from inside.
pub fn serve(server: &Server, screens: &Path, desk: &Desk) {
    let policy = policy();
    loop {
        let mut request = next(server, desk);
        let path = request.url().split('?').next().unwrap_or_default().to_owned();
        let answer = match (request.method(), path.strip_prefix("/api/")) {
            (Method::Post, Some(command)) => {
                let mut body = String::new();
                let read = request.as_reader().read_to_string(&mut body);
                let arguments = read.ok().and_then(|_| serde_json::from_str(&body).ok());
                let answer = desk.run(command, &arguments.unwrap_or_else(|| json!({})));
                Response::from_data(answer.to_string()).with_header(kind("application/json"))
            }
            _ => file(screens, &path).with_header(header("Content-Security-Policy", &policy)),
        };
        // A browser that has gone away is no trouble.
        let _ = respond(request, answer);
    }
}

/// The next request; until it comes, what the app does beside its window.
fn next(server: &Server, desk: &Desk) -> Request {
    let mut is_due = true;
    loop {
        let request = if is_due { server.recv_timeout(BETWEEN) } else { server.recv().map(Some) };
        if let Some(request) = request.expect("the port can be listened on") {
            return request;
        }
        is_due = desk.keep_up();
    }
}

fn respond(request: Request, answer: Response<std::io::Cursor<Vec<u8>>>) -> std::io::Result<()> {
    request.respond(answer)
}

/// Why a command was not done.
enum Refusal {
    /// The workbench says so.
    Problem(Problem),
    /// An argument is missing or no such one: a mistake of the screens, which the app's shell refuses too.
    Argument { name: String, why: String },
    /// There is no such command.
    Command,
}

impl From<Problem> for Refusal {
    fn from(problem: Problem) -> Self {
        Self::Problem(problem)
    }
}

type Answer = Result<Value, Refusal>;

impl Desk {
    /// A desk, and the folder where a person would have files put.
    pub fn new(bench: Workbench, given: PathBuf) -> Self {
        Self { bench: Mutex::new(bench), given }
    }

    /// Runs one command by name. A mistake of the screens is answered, and told on the error stream.
    ///
    /// # Panics
    /// The command fails from inside.
    pub fn run(&self, command: &str, arguments: &Value) -> Value {
        let refused = |code: &str, field: Option<&str>, sentence: String| json!({"problem": {"code": code, "field": field, "sentence": sentence}});
        match self.dispatch(command, &Given(arguments)) {
            Ok(value) => json!({"ok": value}),
            Err(Refusal::Problem(problem)) => {
                let sentence = problem.sentence(self.bench().words());
                json!({"problem": {"code": problem.code, "field": problem.field, "sentence": sentence}})
            }
            Err(Refusal::Argument { name, why }) => {
                eprintln!("argument {name} of {command}: {why}");
                refused("bad_input", Some(&name), why)
            }
            Err(Refusal::Command) => {
                eprintln!("no such command: {command}");
                refused("not_found", None, "there is no such command".to_owned())
            }
        }
    }

    /// Works some classes out, as the app does beside its window; tells whether there were any.
    pub fn keep_up(&self) -> bool {
        self.bench().keep_up().is_ok_and(|units| units > 0)
    }

    fn bench(&self) -> MutexGuard<'_, Workbench> {
        self.bench.lock().unwrap_or_else(PoisonError::into_inner)
    }

    fn dispatch(&self, command: &str, given: &Given<'_>) -> Answer {
        match command {
            "add_photo" => self.add_photo(given),
            "export_bundle" => self.export_bundle(given),
            "import_bundle" => self.import_bundle(given),
            "ask_save_path" => seen(self.place(&given.text("name")?)),
            "ask_open_path" => seen(self.newest_given()),
            "save_file" => self.save_file(given),
            _ => on_bench(&mut self.bench(), command, given),
        }
    }

    fn add_photo(&self, given: &Given<'_>) -> Answer {
        let (inspection, finding) =
            (given.take("inspection")?, given.or_none::<String>("finding")?);
        let photo = take_in(&given.text("picture")?)?;
        seen(self.bench().keep_photo(inspection, finding.as_deref(), &photo)?)
    }

    fn export_bundle(&self, given: &Given<'_>) -> Answer {
        let (units, path) = (given.or_none("units")?, given.take::<PathBuf>("path")?);
        let work = self.bench().export_work(units)?;
        seen(work.run(&path)?)
    }

    fn import_bundle(&self, given: &Given<'_>) -> Answer {
        let path: PathBuf = given.take("path")?;
        let files = self.bench().photo_files()?;
        let work = look_at_bundle(&path, &files)?;
        seen(self.bench().keep_bundle(work)?)
    }

    fn save_file(&self, given: &Given<'_>) -> Answer {
        let (name, content) = (given.text("name")?, given.text("content")?);
        // A name that is none leads nowhere, as where the person thinks better of it.
        let Some(to) = self.place(&name) else { return seen(false) };
        save_text(&to, &content)?;
        seen(true)
    }

    /// Where a file of this name would be put; whatever leads elsewhere is left off.
    fn place(&self, name: &str) -> Option<PathBuf> {
        Some(self.given.join(Path::new(name).file_name()?))
    }

    /// The bundle that a person would choose: the one that was put there last; nothing where there is none.
    fn newest_given(&self) -> Option<PathBuf> {
        let files = std::fs::read_dir(&self.given).ok()?.filter_map(Result::ok);
        let bundles = files.map(|file| file.path());
        let bundles =
            bundles.filter(|path| path.extension().is_some_and(|end| end == "coldbundle"));
        bundles.max_by_key(|path| path.metadata().and_then(|file| file.modified()).ok())
    }
}

/// The arguments of a command.
struct Given<'a>(&'a Value);

impl Given<'_> {
    /// One that has to be there.
    fn take<T: DeserializeOwned>(&self, name: &str) -> Result<T, Refusal> {
        let missing = || Refusal::Argument {
            name: name.to_owned(),
            why: "the argument is missing".to_owned(),
        };
        self.read(name, self.0.get(name).ok_or_else(missing)?)
    }

    /// One that may be left out.
    fn or_none<T: DeserializeOwned>(&self, name: &str) -> Result<Option<T>, Refusal> {
        self.read(name, self.0.get(name).unwrap_or(&Value::Null))
    }

    fn text(&self, name: &str) -> Result<String, Refusal> {
        self.take(name)
    }

    fn read<T: DeserializeOwned>(&self, name: &str, value: &Value) -> Result<T, Refusal> {
        serde_json::from_value(value.clone()).map_err(|error| {
            let why = error.to_string().chars().take(200).collect();
            Refusal::Argument { name: name.to_owned(), why }
        })
    }
}

fn seen(view: impl Serialize) -> Answer {
    Ok(json!(view))
}

/// A command that the workbench does from its beginning to its end.
fn on_bench(bench: &mut Workbench, command: &str, given: &Given<'_>) -> Answer {
    let inspection = || given.take("inspection");
    let photo = || given.take("photo");
    match command {
        "list_units" => seen(bench.units(given.or_none::<String>("text")?.as_deref())?),
        "list_presets" => seen(presets(bench.words())),
        "list_regions" => seen(regions(bench.words())),
        "show_question" => seen(bench.question(&given.text("question")?)?),
        "undo" => seen(bench.undo(inspection()?)?),
        "create_unit" => seen(bench.create_unit(&given.take("unit")?)?),
        "start_inspection" => {
            let access: Vec<String> = given.take("access")?;
            seen(bench.start_inspection(given.take("unit")?, &access)?)
        }
        "show_inspection" => seen(bench.inspection(inspection()?)?),
        "answer" => {
            let (question, answer) = (given.text("question")?, given.take("answer")?);
            seen(bench.answer(inspection()?, &question, answer)?)
        }
        "set_value" => {
            let (value, reading) = (given.text("value")?, given.take("reading")?);
            seen(bench.set_value(inspection()?, &value, reading)?)
        }
        "leave_open" => seen(bench.leave_open(inspection()?, &given.text("value")?)?),
        "set_rated" => seen(bench.set_rated(inspection()?, given.take("rated")?)?),
        "set_tubes" => seen(bench.set_tubes(inspection()?, given.take("tubes")?)?),
        "set_reading" => {
            let (reading, value) = (given.text("reading")?, given.take("value")?);
            seen(bench.set_reading(inspection()?, &reading, value)?)
        }
        "meter_readings" => seen(bench.meter_readings(inspection()?)?),
        "set_meter" => seen(bench.set_meter(inspection()?, given.take("meter")?)?),
        "stored_charge" => seen(bench.stored_charge(given.take("charge")?)?),
        "insulation_test" => seen(bench.insulation_test(inspection()?)?),
        "grid" => seen(bench.grid(inspection()?)?),
        "chart" => seen(bench.chart(inspection()?)?),
        "circuit" => seen(bench.circuit(inspection()?, given.take("at")?)?),
        "remedies" => seen(bench.remedies(inspection()?)?),
        "remedy_stack" => seen(bench.remedy_stack(inspection()?, given.take("stack")?)?),
        "circuit_repaired" => {
            let (stack, at) = (given.take("stack")?, given.take("at")?);
            seen(bench.circuit_repaired(inspection()?, stack, at)?)
        }
        "choose_remedies" => seen(bench.choose_remedies(inspection()?, given.take("stack")?)?),
        "proof" => seen(bench.proof(inspection()?)?),
        "enter_proof" => {
            let (line, entry) = (given.text("line")?, given.take("entry")?);
            seen(bench.enter_proof(inspection()?, &line, entry)?)
        }
        "mark_ready" => seen(bench.mark_ready(inspection()?, given.take("ready")?)?),
        "feeds" => seen(bench.feeds(inspection()?)?),
        "set_feed" => seen(bench.set_feed(inspection()?, given.take("feed")?)?),
        "touch_test" => seen(bench.touch_test(inspection()?)?),
        "set_live_test" => {
            let (part, value) = (given.text("part")?, given.take("value")?);
            seen(bench.set_live_test(inspection()?, &part, value)?)
        }
        "withdraw" => seen(bench.withdraw(inspection()?, &given.text("finding")?)?),
        "set_access" => {
            let access: Vec<String> = given.take("access")?;
            seen(bench.set_access(inspection()?, &access)?)
        }
        "set_supply" => seen(bench.set_supply(inspection()?, given.take("supply")?)?),
        "rename" => seen(bench.rename(inspection()?, &given.text("name")?)?),
        "set_place" => seen(bench.set_place(inspection()?, &given.text("place")?)?),
        "set_inspector" => {
            let (author, language) = (given.text("author")?, given.text("language")?);
            bench.set_inspector(&author, &language)?;
            seen(())
        }
        "show_photo" => seen(bench.photo_text(&given.text("sha256")?, given.take("thumbnail")?)?),
        "caption_photo" => {
            let caption = given.text("caption")?;
            seen(bench.caption_photo(inspection()?, photo()?, &caption)?)
        }
        "mark_photo" => seen(bench.mark_photo(inspection()?, photo()?, given.take("marks")?)?),
        "measure_photo" => {
            seen(bench.measure_photo(inspection()?, photo()?, given.take("ask")?)?)
        }
        "pair_photo" => {
            seen(bench.pair_photo(inspection()?, photo()?, given.or_none("before")?)?)
        }
        "order_photos" => seen(bench.order_photos(inspection()?, given.take("order")?)?),
        "export_photo" => seen(bench.export_text(inspection()?, photo()?)?),
        "remove_photo" => seen(bench.remove_photo(inspection()?, photo()?)?),
        "find_tubes" => seen(bench.find_tubes(&given.text("text")?)),
        "read_tubes" => seen(bench.read_tubes(&given.text("text")?)),
        "study_heaters" => {
            let (volts, hertz) = (given.take("volts")?, given.take("hertz")?);
            seen(bench.study_heaters(given.take("tubes")?, volts, hertz)?)
        }
        "load_demo" => seen(bench.load_demo()?),
        "remove_demo" => seen(bench.remove_demo()?),
        _ => of_the_record(bench, command, given),
    }
}

/// A command for the record as a whole.
fn of_the_record(bench: &mut Workbench, command: &str, given: &Given<'_>) -> Answer {
    match command {
        "show_queue" => seen(bench.queue(&given.take("ask")?)?),
        "count_queue" => seen(bench.queue_counts()?),
        "list_places" => seen(bench.queue_places(&given.text("text")?)?),
        // No copy is made beside this one, so none can fail.
        "copy_trouble" => seen(None::<()>),
        "count_pending" => seen(bench.pending()?),
        "delete_unit" => seen(bench.delete_unit(given.take("unit")?)?),
        "set_unit_state" => seen(bench.set_unit_state(given.take("unit")?, &given.text("state")?)?),
        "list_snapshots" => {
            let there = bench.recovery().map_or(Ok(Vec::new()), |recovery| recovery.snapshots());
            seen(there?)
        }
        "restore_snapshot" => {
            let readable = given.take("readable")?;
            seen(bench.restore(given.or_none("number")?, readable)?)
        }
        "export_readable" => {
            let path: PathBuf = given.take("path")?;
            let recovery = bench.recovery().expect("a record in a file");
            seen(recovery.export_readable(0, &path)?)
        }
        "make_report" => seen(bench.report(given.take("inspection")?, &given.take("ask")?)?),
        "report_text" => seen(bench.report_text(given.take("inspection")?)?),
        "make_tags" => {
            let units: Vec<_> = given.take("units")?;
            seen(bench.tags(&units, given.take("paper")?)?)
        }
        "list_csv" => seen(bench.list_csv()?),
        _ => Err(Refusal::Command),
    }
}

fn file(screens: &Path, path: &str) -> Response<std::io::Cursor<Vec<u8>>> {
    let wanted = path.trim_start_matches('/');
    let wanted = if wanted.is_empty() { "index.html" } else { wanted };
    let is_plain = !wanted.split('/').any(|part| part == "..");
    let found: PathBuf = screens.join(wanted);
    match std::fs::read(&found) {
        Ok(bytes) if is_plain => Response::from_data(bytes).with_header(kind(content(&found))),
        _ => Response::from_data(Vec::new()).with_status_code(404),
    }
}

fn content(path: &Path) -> &'static str {
    match path.extension().and_then(|extension| extension.to_str()) {
        Some("html") => "text/html; charset=utf-8",
        Some("js") => "text/javascript",
        Some("css") => "text/css",
        Some("svg") => "image/svg+xml",
        Some("woff2") => "font/woff2",
        Some("jpg") => "image/jpeg",
        Some("png") => "image/png",
        _ => "application/octet-stream",
    }
}

/// The content security policy of the app, so that what it bars is barred in the browser too; only the
/// way to the commands is another.
fn policy() -> String {
    let configuration = include_str!("../../src-tauri/tauri.conf.json");
    let configuration: Value = serde_json::from_str(configuration).expect("JSON");
    let rules = configuration["app"]["security"]["csp"].as_object().expect("a policy");
    let rule = |(name, what): (&String, &Value)| {
        let what = if name == "connect-src" { "'self'" } else { what.as_str().expect("a rule") };
        format!("{name} {what}")
    };
    rules.iter().map(rule).collect::<Vec<_>>().join("; ")
}

fn kind(content: &str) -> Header {
    header("Content-Type", content)
}

fn header(name: &str, value: &str) -> Header {
    Header::from_bytes(name, value).expect("a header")
}
