//! The app while it runs, with the web driver that taps in it.

use std::path::PathBuf;
use std::process::Stdio;
use std::time::Duration;

use fantoccini::error::NewSessionError;
use fantoccini::{Client, ClientBuilder};
use hyper_util::client::legacy::connect::HttpConnector;
use serde_json::{Value, json};
use tokio::net::{TcpListener, TcpStream};
use tokio::process::{Child, Command};

use super::ended::{self, Ended};
use super::stage::{self, Stage};

/// How long the driver and the app may take to start.
const START: Duration = Duration::from_secs(40);
/// How many drivers are started before one is taken to be out of order.
const TRIES: usize = 3;
/// How often to look again.
pub(crate) const AGAIN: Duration = Duration::from_millis(30);

/// The app in its window. Dropped, it is killed, and the driver with it.
pub struct App {
    /// The web driver's session with its web view.
    pub client: Client,
    process: Ended,
    _driver: Child,
}

impl App {
    /// Starts the app on a stage, in a window as large as a phone's screen.
    ///
    /// # Panics
    /// When a program is missing or the app does not start.
    pub async fn start(stage: &Stage) -> Self {
        let program = stage::program();
        let app = Self::drive(stage, program).await;
        app.client.set_window_size(390, 844).await.expect("a window of a phone's size");
        app
    }

    /// Starts the small browser that comes with the driver: the same engine without our bars.
    ///
    /// # Panics
    /// When it is not installed.
    pub async fn bare_browser(stage: &Stage) -> Self {
        let program = PathBuf::from("/usr/lib/x86_64-linux-gnu/webkit2gtk-4.1/MiniBrowser");
        assert!(program.exists(), "{} is not there", program.display());
        Self::drive(stage, program).await
    }

    async fn drive(stage: &Stage, program: PathBuf) -> Self {
        let mut tries = 0;
        let (client, driver) = loop {
            tries += 1;
            let port = free_port().await;
            let mut driver = Command::new("WebKitWebDriver");
            let driver = stage.set(driver.arg(format!("--port={port}")));
            // The app lets itself be driven only where it is told so.
            driver.env("TAURI_AUTOMATION", "true").env("TAURI_WEBVIEW_AUTOMATION", "true");
            let driver = ended::start(driver.stdout(Stdio::null()).stderr(Stdio::null()));
            let session = tokio::time::timeout(START, session(port, &program)).await;
            match session.expect("the app does not start") {
                Ok(client) => break (client, driver),
                // The port may have been taken since it was free, and the driver with it: that says nothing of the app.
                Err(NewSessionError::FailedC(_) | NewSessionError::Lost(_)) if tries < TRIES => {}
                Err(error) => panic!("the app can be driven: {error}"),
            }
        };
        let number = driver.id().expect("the driver runs");
        let process = Ended::child_of(number, program).expect("the app runs under the driver");
        Self { client, process, _driver: driver }
    }

    /// Kills it as an empty battery would, and waits until it is gone.
    ///
    /// # Panics
    /// When it survives.
    pub async fn kill(self) {
        self.process.kill();
        let gone = async {
            while self.process.is_running() {
                tokio::time::sleep(AGAIN).await;
            }
        };
        tokio::time::timeout(START, gone).await.expect("the app survives");
    }

    /// Whether the app still runs.
    pub fn is_running(&self) -> bool {
        self.process.is_running()
    }

    /// The number of its process.
    pub fn number(&self) -> u32 {
        self.process.number()
    }

    /// When its process started, in ms since 1970 as the page counts; to 20 ms.
    ///
    /// # Panics
    /// When it has ended.
    pub fn started_at(&self) -> f64 {
        self.process.started_at()
    }

    /// Runs a script in the page.
    ///
    /// # Panics
    /// When the script throws.
    pub async fn script(&self, script: &str, arguments: Vec<Value>) -> Value {
        let result = self.client.execute(script, arguments).await;
        result.unwrap_or_else(|error| panic!("{error} in {script}"))
    }

    /// Runs a command of the app as the screens do; gives what it answers or refuses with.
    ///
    /// # Panics
    /// When the page has no way to call the app.
    pub async fn command(&self, command: &str, arguments: Value) -> Result<Value, Value> {
        let script = "const [command, given, done] = arguments;
            window.__TAURI_INTERNALS__.invoke(command, given)
                .then((ok) => done({ok}), (refused) => done({refused}));";
        let given = vec![json!(command), arguments];
        let answer = self.client.execute_async(script, given).await.expect("the page can call");
        match answer.get("refused") {
            Some(refused) => Err(refused.clone()),
            None => Ok(answer["ok"].clone()),
        }
    }
}

/// The driver takes a moment until it listens.
async fn session(port: u16, program: &std::path::Path) -> Result<Client, NewSessionError> {
    while TcpStream::connect(("127.0.0.1", port)).await.is_err() {
        tokio::time::sleep(AGAIN).await;
    }
    let arguments: &[&str] = if program.ends_with("MiniBrowser") { &["--automation"] } else { &[] };
    let options = json!({"binary": program, "args": arguments});
    let wanted = [("webkitgtk:browserOptions".to_owned(), options)];
    ClientBuilder::new(HttpConnector::new())
        .capabilities(wanted.into_iter().collect())
        .connect(&format!("http://127.0.0.1:{port}"))
        .await
}

/// Free a moment ago; the driver cannot be asked to choose one.
async fn free_port() -> u16 {
    let listener = TcpListener::bind(("127.0.0.1", 0)).await.expect("a port is free");
    listener.local_addr().expect("a port has a number").port()
}
