//! The program itself, as it was built with this check: all else about it is in `tests/checks/command_line`.

use std::io;
use std::process::Command;

#[test]
fn it_says_its_version_and_nothing_to_the_error_stream() -> io::Result<()> {
    let ran = Command::new(env!("CARGO_BIN_EXE_coldchassis")).arg("--version").output()?;
    assert!(ran.status.success());
    assert_eq!(
        String::from_utf8_lossy(&ran.stdout).trim(),
        concat!("coldchassis ", env!("CARGO_PKG_VERSION"))
    );
    assert!(ran.stderr.is_empty(), "{}", String::from_utf8_lossy(&ran.stderr));
    Ok(())
}
