//! The package on the machine: what is in it, what it puts where, and how it comes and goes.

use std::path::{Path, PathBuf};
use std::process::{Command, Output};

/// How the system calls the package.
const NAME: &str = "coldchassis";
/// What it has to put where.
const FILES: [&str; 9] = [
    super::PROGRAM,
    super::COMMAND_LINE,
    "/usr/share/applications/coldchassis-app.desktop",
    "/usr/share/doc/coldchassis/copyright",
    "/usr/share/doc/coldchassis/changelog.Debian.gz",
    "/usr/share/icons/hicolor/32x32/apps/coldchassis.png",
    "/usr/share/icons/hicolor/256x256/apps/coldchassis.png",
    "/usr/share/icons/hicolor/scalable/apps/coldchassis.svg",
    "/usr/share/metainfo/org.coldchassis.inspection.metainfo.xml",
];
/// What the window cannot do without.
const NEEDS: [&str; 2] = ["libwebkit2gtk-4.1-0", "libgtk-3-0"];

/// The package, installed. Dropped, it is taken off the machine, also where a check has failed.
pub struct Package;

impl Package {
    /// Installs it on a machine that does not have it.
    ///
    /// # Panics
    /// When it is there already: taking it away is not for a check to do.
    pub fn install(file: &Path) -> Self {
        assert_eq!(installed(), None, "{NAME} is installed here: it would be removed in the end");
        let package = Self;
        package.install_over(file);
        package
    }

    /// Installs a file over what is there, or where it was.
    pub fn install_over(&self, file: &Path) {
        let file = file.display().to_string();
        as_root(&["apt-get", "install", "--yes", "--quiet", "--no-install-recommends", &file]);
    }

    /// Takes it away, by `remove` or `purge`.
    pub fn take_away(&self, how: &str) {
        as_root(&["apt-get", how, "--yes", "--quiet", NAME]);
        assert_eq!(installed(), None, "after {how}");
    }

    /// The version that is installed.
    pub fn version(&self) -> String {
        installed().expect("the package is installed")
    }
}

impl Drop for Package {
    fn drop(&mut self) {
        if installed().is_some() {
            as_root(&["apt-get", "purge", "--yes", "--quiet", NAME]);
        }
    }
}

/// The version that is installed; nothing where it is not, or only its settings are left.
fn installed() -> Option<String> {
    let asked =
        run(Command::new("dpkg-query").args(["-W", "-f=${db:Status-Status} ${Version}", NAME]));
    let status = asked.status.success().then(|| text(&asked.stdout))?;
    status.strip_prefix("installed ").map(str::to_owned)
}

/// A package without scripts can touch nobody's home as it comes and goes. It has to name what it needs, and who keeps
/// it is no real person.
pub fn holds_no_script(file: &Path) {
    let member = |name: &str| {
        run(Command::new("dpkg-deb").arg("--info").arg(file).arg(name)).status.success()
    };
    assert!(member("control"), "{} is no package", file.display());
    for script in ["preinst", "postinst", "prerm", "postrm", "config", "triggers"] {
        assert!(!member(script), "{script} runs as it comes or goes");
    }
    let field = |name: &str| said(Command::new("dpkg-deb").arg("--field").arg(file).arg(name));
    let depends = field("Depends");
    for need in NEEDS {
        assert!(depends.split(", ").any(|part| part.split(' ').next() == Some(need)), "{depends}");
    }
    assert!(field("Maintainer").ends_with(".invalid>"), "{}", field("Maintainer"));
}

/// What Debian's own reader of packages says; its errors fail, the rest is shown.
pub fn lint(file: &Path) {
    let looked =
        run(Command::new("lintian").args(["--fail-on", "error", "--color", "never"]).arg(file));
    println!("lintian: {}", text(&looked.stdout));
    assert!(looked.status.success(), "{}", text(&looked.stderr));
}

/// Every file that the package has put on the machine.
pub fn files() -> Vec<PathBuf> {
    let listed = said(Command::new("dpkg").args(["-L", NAME]));
    listed.lines().map(PathBuf::from).filter(|path| !path.is_dir()).collect()
}

/// All is where it belongs, every library is found, and the menu's entry and the description hold to their standards.
pub fn is_whole() {
    let files = files();
    for file in FILES.map(Path::new) {
        assert!(files.iter().any(|there| there == file), "{} is not in it", file.display());
        assert!(file.is_file(), "{} is not there", file.display());
    }
    for program in [super::PROGRAM, super::COMMAND_LINE] {
        let libraries = said(Command::new("ldd").arg(program));
        assert!(!libraries.contains("not found"), "{program}: {libraries}");
    }
    said(Command::new("desktop-file-validate").arg(FILES[2]));
    said(Command::new("appstreamcli").args(["validate", "--no-net", FILES[8]]));
}

/// Runs a command that only root may run.
fn as_root(command: &[&str]) {
    let root = said(Command::new("id").arg("-u")) == "0";
    let command: Vec<&str> =
        (!root).then_some("sudo").into_iter().chain(command.iter().copied()).collect();
    said(Command::new(command[0]).args(&command[1..]).env("DEBIAN_FRONTEND", "noninteractive"));
}

/// What a command prints, which has to end well.
fn said(command: &mut Command) -> String {
    let ran = run(command);
    assert!(ran.status.success(), "{command:?}: {}{}", text(&ran.stdout), text(&ran.stderr));
    text(&ran.stdout)
}

fn run(command: &mut Command) -> Output {
    // What is read is compared: no other language.
    let ran = command.env("LC_ALL", "C.UTF-8").output();
    ran.unwrap_or_else(|error| panic!("{command:?} does not start: {error}"))
}

fn text(bytes: &[u8]) -> String {
    String::from_utf8_lossy(bytes).trim().to_owned()
}
