//! The commands of the app over loopback HTTP, so that the very same screens run in a browser.
//!
//! It lives with the checks and never ships. One request, one command: `POST /api/<command>` with the
//! arguments as a JSON object; the answer is `{"ok": …}` or `{"problem": …}`, the problem with the
//! sentence a person reads. Everything else is a file of the built screens.

use std::path::{Path, PathBuf};

use coldchassis_core::workbench::{
    NewUnit, Problem, Workbench, look_at_bundle, presets, take_in,
};
use serde::de::DeserializeOwned;
use serde_json::{Value, json};
use tiny_http::{Header, Method, Request, Response, Server};

/// Serves until the process ends.
///
/// # Panics
/// When the port cannot be listened on.
pub fn serve(server: &Server, screens: &Path, bench: &mut Workbench) {
    let policy = policy();
    for mut request in server.incoming_requests() {
        let path = request.url().split('?').next().unwrap_or_default().to_owned();
        let answer = match (request.method(), path.strip_prefix("/api/")) {
            (Method::Post, Some(command)) => {
                let mut body = String::new();
                let read = request.as_reader().read_to_string(&mut body);
                let arguments = read.ok().and_then(|_| serde_json::from_str(&body).ok());
                let answer = run(bench, command, &arguments.unwrap_or_else(|| json!({})));
                Response::from_data(answer.to_string()).with_header(kind("application/json"))
            }
            _ => file(screens, &path).with_header(header("Content-Security-Policy", &policy)),
        };
        // A browser that has gone away is no trouble.
        let _ = respond(request, answer);
    }
}

fn respond(request: Request, answer: Response<std::io::Cursor<Vec<u8>>>) -> std::io::Result<()> {
    request.respond(answer)
}

/// Runs one command by name.
pub fn run(bench: &mut Workbench, command: &str, arguments: &Value) -> Value {
    match dispatch(bench, command, arguments) {
        Ok(value) => json!({"ok": value}),
        Err(problem) => {
            let sentence = problem.sentence(bench.words());
            json!({"problem": {"code": problem.code, "field": problem.field, "sentence": sentence}})
        }
    }
}

fn dispatch(bench: &mut Workbench, command: &str, given: &Value) -> Result<Value, Problem> {
    let text = |name: &str| given[name].as_str().unwrap_or_default();
    let inspection = || argument(given, "inspection");
    let texts = |name: &str| argument::<Vec<String>>(given, name);
    let view = match command {
        "list_units" => return Ok(json!(bench.units(given["text"].as_str())?)),
        "list_presets" => return Ok(json!(presets(bench.words()))),
        "show_question" => return Ok(json!(bench.question(text("question"))?)),
        "undo" => return Ok(json!(bench.undo(inspection())?)),
        "create_unit" => bench.create_unit(&argument::<NewUnit>(given, "unit"))?,
        "start_inspection" => bench.start_inspection(argument(given, "unit"), &texts("access"))?,
        "show_inspection" => bench.inspection(inspection())?,
        "answer" => bench.answer(inspection(), text("question"), given["answer"].clone())?,
        "set_value" => bench.set_value(inspection(), text("value"), given["reading"].clone())?,
        "leave_open" => bench.leave_open(inspection(), text("value"))?,
        "set_rated" => bench.set_rated(inspection(), given["rated"].clone())?,
        "set_tubes" => bench.set_tubes(inspection(), given["tubes"].clone())?,
        "set_reading" => {
            bench.set_reading(inspection(), text("reading"), given["value"].clone())?
        }
        "meter_readings" => return Ok(json!(bench.meter_readings(inspection())?)),
        "set_meter" => bench.set_meter(inspection(), given["meter"].clone())?,
        "stored_charge" => return Ok(json!(bench.stored_charge(given["charge"].clone())?)),
        "insulation_test" => return Ok(json!(bench.insulation_test(inspection())?)),
        "grid" => return Ok(json!(bench.grid(inspection())?)),
        "chart" => return Ok(json!(bench.chart(inspection())?)),
        "circuit" => return Ok(json!(bench.circuit(inspection(), given["at"].clone())?)),
        "touch_test" => return Ok(json!(bench.touch_test(inspection())?)),
        "set_live_test" => {
            bench.set_live_test(inspection(), text("part"), given["value"].clone())?
        }
        "withdraw" => bench.withdraw(inspection(), text("finding"))?,
        "set_access" => bench.set_access(inspection(), &texts("access"))?,
        "set_supply" => bench.set_supply(inspection(), given["supply"].clone())?,
        "rename" => bench.rename(inspection(), text("name"))?,
        "set_place" => bench.set_place(inspection(), text("place"))?,
        "set_inspector" => {
            return Ok(json!(bench.set_inspector(text("author"), text("language"))?));
        }
        "add_photo" => {
            let photo = take_in(text("picture"))?;
            bench.keep_photo(inspection(), given["finding"].as_str(), &photo)?
        }
        "show_photo" => {
            let thumbnail = argument(given, "thumbnail");
            return Ok(json!(bench.photo_text(text("sha256"), thumbnail)?));
        }
        "caption_photo" => {
            bench.caption_photo(inspection(), argument(given, "photo"), text("caption"))?
        }
        "mark_photo" => {
            bench.mark_photo(inspection(), argument(given, "photo"), given["marks"].clone())?
        }
        "measure_photo" => {
            let ask = given["ask"].clone();
            return Ok(json!(bench.measure_photo(inspection(), argument(given, "photo"), ask)?));
        }
        "pair_photo" => {
            bench.pair_photo(inspection(), argument(given, "photo"), argument(given, "before"))?
        }
        "order_photos" => bench.order_photos(inspection(), argument(given, "order"))?,
        "export_photo" => {
            return Ok(json!(bench.export_text(inspection(), argument(given, "photo"))?));
        }
        "remove_photo" => bench.remove_photo(inspection(), argument(given, "photo"))?,
        "find_tubes" => return Ok(json!(bench.find_tubes(text("text")))),
        "read_tubes" => return Ok(json!(bench.read_tubes(text("text")))),
        "study_heaters" => {
            let (volts, hertz) = (argument(given, "volts"), argument(given, "hertz"));
            return Ok(json!(bench.study_heaters(given["tubes"].clone(), volts, hertz)?));
        }
        "load_demo" => return Ok(json!(bench.load_demo()?)),
        "show_queue" => return Ok(json!(bench.queue(&argument(given, "ask"))?)),
        "count_queue" => return Ok(json!(bench.queue_counts()?)),
        "list_places" => return Ok(json!(bench.queue_places()?)),
        "set_unit_state" => {
            return Ok(json!(bench.set_unit_state(argument(given, "unit"), text("state"))?));
        }
        "export_bundle" => {
            let work = bench.export_work(argument(given, "units"))?;
            return Ok(json!(work.run(Path::new(text("path")))?));
        }
        "import_bundle" => {
            let work = look_at_bundle(Path::new(text("path")), &bench.photo_files()?)?;
            return Ok(json!(bench.keep_bundle(work)?));
        }
        "list_snapshots" => {
            let recovery = bench.recovery();
            let there = recovery.map_or(Ok(Vec::new()), |recovery| recovery.snapshots());
            return Ok(json!(there?));
        }
        "restore_snapshot" => {
            let readable = argument(given, "readable");
            return Ok(json!(bench.restore(argument(given, "number"), readable)?));
        }
        "export_readable" => {
            let recovery = bench.recovery().expect("a record in a file");
            return Ok(json!(recovery.export_readable(0, Path::new(text("path")))?));
        }
        "remove_demo" => return Ok(json!(bench.remove_demo()?)),
        unknown => panic!("the screens ask for a command that is not there: {unknown}"),
    };
    Ok(json!(view))
}

/// An argument of a command; one that does not fit is a mistake of the screens.
fn argument<T: DeserializeOwned>(given: &Value, name: &str) -> T {
    serde_json::from_value(given[name].clone())
        .unwrap_or_else(|error| panic!("argument {name} of the screens: {error} in {given}"))
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
