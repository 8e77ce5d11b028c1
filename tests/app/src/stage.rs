//! What a run of the app needs: a display that nobody sees, folders of its own, the program.

use std::path::{Path, PathBuf};
use std::process::Stdio;

use tempfile::TempDir;
use tokio::process::{Child, Command};

use super::ended;

/// What is still there when the app is started again.
const KEPT: [&str; 4] = ["data", "share", "config", "cache"];
/// What is only of use while something runs.
const PASSING: [&str; 2] = ["run", FRAME];
/// What the app is called by the system; so is its folder there.
const IDENTIFIER: &str = "org.coldchassis.inspection";
/// The folder of the display's pixels.
const FRAME: &str = "frame";

/// A place to start the app in, more than once: what it keeps stays until the stage is dropped.
pub struct Stage {
    display: String,
    _xvfb: Child,
    home: TempDir,
    data: PathBuf,
}

impl Stage {
    /// A new one: nothing was ever kept here.
    ///
    /// # Panics
    /// When Xvfb is not installed.
    pub async fn new() -> Self {
        let home = tempfile::tempdir().expect("a temporary folder");
        for folder in KEPT.into_iter().chain(PASSING) {
            let folder = home.path().join(folder);
            std::fs::create_dir(&folder).expect("a new folder");
            only_ours(&folder);
        }
        let mut xvfb = Command::new("Xvfb");
        xvfb.args(["-displayfd", "1", "-screen", "0", "1400x1000x24", "-nolisten", "tcp"]);
        xvfb.arg("-fbdir").arg(home.path().join(FRAME));
        let mut xvfb = ended::start(xvfb.stdout(Stdio::piped()).stderr(Stdio::null()));
        let display = format!(":{}", ended::first_line(&mut xvfb).await);
        let data = home.path().join("data");
        Self { display, _xvfb: xvfb, home, data }
    }

    /// A new one where nobody names a folder for the record: the app takes the system's own, as it does installed.
    ///
    /// # Panics
    /// When Xvfb is not installed.
    pub async fn as_installed() -> Self {
        let stage = Self::new().await;
        let data = stage.home.path().join("share").join(IDENTIFIER);
        Self { data, ..stage }
    }

    /// Another one where the same was kept. Nothing may run on this one meanwhile.
    ///
    /// # Panics
    /// When it cannot be copied.
    pub async fn copy(&self) -> Self {
        let other = Self::new().await;
        for folder in KEPT {
            copy(&self.home.path().join(folder), &other.home.path().join(folder));
        }
        other
    }

    /// The file in which the display keeps its pixels, for as long as the stage is there.
    pub fn pixels(&self) -> PathBuf {
        self.home.path().join(FRAME).join("Xvfb_screen0")
    }

    /// The folder that the app keeps its record in.
    pub fn data(&self) -> PathBuf {
        self.data.clone()
    }

    /// Presses keys on this display, as xdotool takes them; whether it did.
    ///
    /// # Panics
    /// When xdotool is not installed.
    pub async fn press(&self, what: &[&str]) -> bool {
        self.runs("xdotool", what).await
    }

    /// Whether a program runs on this stage to a good end. What it starts in its turn may go on.
    ///
    /// # Panics
    /// When it is not installed.
    pub async fn runs(&self, program: &str, arguments: &[&str]) -> bool {
        let mut run = Command::new(program);
        let run = self.set(run.args(arguments)).stdin(Stdio::null());
        let ran = run.stdout(Stdio::null()).stderr(Stdio::null()).status().await;
        ran.unwrap_or_else(|error| panic!("{program} does not start: {error}")).success()
    }

    /// What a program prints on this stage until it ends, and all that it has started; nothing where it fails.
    ///
    /// # Panics
    /// When it is not installed.
    pub async fn ask(&self, program: &str, arguments: &[&str]) -> Option<String> {
        let mut asked = Command::new(program);
        let ran = self.set(asked.args(arguments)).stdin(Stdio::null()).output().await;
        let ran = ran.unwrap_or_else(|error| panic!("{program} does not start: {error}"));
        ran.status.success().then(|| String::from_utf8_lossy(&ran.stdout).trim().to_owned())
    }

    /// Gives a program this stage and nothing of the surroundings that the check runs in.
    pub fn set<'a>(&self, command: &'a mut Command) -> &'a mut Command {
        let within = |folder: &str| self.home.path().join(folder);
        let named = self.data == within("data");
        command
            .env_clear()
            .env("PATH", std::env::var_os("PATH").unwrap_or_default())
            .env("LANG", "C.UTF-8")
            .env("DISPLAY", &self.display)
            .env("HOME", self.home.path())
            .env("XDG_RUNTIME_DIR", within("run"))
            .env("XDG_DATA_HOME", within("share"))
            .env("XDG_CONFIG_HOME", within("config"))
            .env("XDG_CACHE_HOME", within("cache"))
            .envs(named.then_some(("COLDCHASSIS_DATA", &self.data)))
            // There is no bus for assistive programs here, and looking for one takes seconds.
            .env("NO_AT_BRIDGE", "1")
    }
}

/// The program to drive: `COLDCHASSIS_APP`, else what was built beside this check.
///
/// # Panics
/// When it is not there: a check without the app must not pass.
pub fn program() -> PathBuf {
    let named = std::env::var_os("COLDCHASSIS_APP").map(PathBuf::from);
    let program = named.unwrap_or_else(built);
    let found = program.canonicalize();
    found.unwrap_or_else(|_| {
        panic!("{} is not there: cargo build -p coldchassis-app", program.display())
    })
}

/// Checks are in `deps` of the folder of the program, other programs in the folder itself.
fn built() -> PathBuf {
    let this = std::env::current_exe().expect("a process knows its program");
    let folder = this.ancestors().skip(1).find(|folder| !folder.ends_with("deps"));
    folder.expect("a program is in a folder").join("coldchassis-app")
}

/// Copies all files below a folder.
fn copy(from: &Path, to: &Path) {
    std::fs::create_dir_all(to).expect("a new folder");
    for entry in std::fs::read_dir(from).expect("a folder") {
        let path = entry.expect("an entry").path();
        let to = to.join(path.file_name().expect("a name"));
        if path.is_dir() {
            copy(&path, &to);
        } else if path.is_file() {
            std::fs::copy(&path, &to).expect("a file");
        }
    }
}

#[cfg(unix)]
fn only_ours(folder: &Path) {
    use std::os::unix::fs::PermissionsExt;
    let mode = std::fs::Permissions::from_mode(0o700);
    std::fs::set_permissions(folder, mode).expect("our own folder");
}
