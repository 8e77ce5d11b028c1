//! Serves the built screens and the commands on a loopback port: `bridge PORT SCREENS [RECORD]`.

use std::path::{Path, PathBuf};

use coldchassis_core::workbench::{Surroundings, Workbench};
use coldchassis_tests::bridge::{self, Desk};
use tiny_http::Server;

fn main() {
    let arguments: Vec<String> = std::env::args().skip(1).collect();
    let port = arguments.first().map_or("0", String::as_str);
    let screens = arguments.get(1).map_or_else(|| PathBuf::from("ui/dist"), PathBuf::from);
    // Beside the record; without one, in a folder that goes with this process.
    let passing = tempfile::tempdir().expect("a temporary folder");
    let kept = arguments.get(2).and_then(|record| Path::new(record).parent());
    let photos = kept.unwrap_or(passing.path()).join("photos");
    let around = Surroundings {
        clock: Box::new(|| {
            let since = std::time::SystemTime::now().duration_since(std::time::UNIX_EPOCH);
            since.map_or(0, |since| since.as_millis() as i64)
        }),
        ids: Box::new(uuid::Uuid::now_v7),
        device: "browser".to_owned(),
        photos: Some(photos),
        author: String::new(),
        locale: "en".to_owned(),
    };
    let bench = match arguments.get(2) {
        Some(record) => Workbench::open(Path::new(record), around),
        None => Workbench::in_memory(around),
    };
    let desk = Desk::new(bench.expect("the record opens"), given_folder());
    // Loopback only: nothing outside this machine may reach it.
    let server = Server::http(format!("127.0.0.1:{port}")).expect("the port is free");
    println!("http://{}", server.server_addr());
    bridge::serve(&server, &screens, &desk);
}

/// Where a person would have files put: `COLDCHASSIS_GIVEN`, else a folder of this process.
fn given_folder() -> PathBuf {
    let own = || std::env::temp_dir().join(format!("given-{}", std::process::id()));
    let folder = std::env::var_os("COLDCHASSIS_GIVEN").map_or_else(own, PathBuf::from);
    std::fs::create_dir_all(&folder).expect("a folder for what is given away");
    folder
}
