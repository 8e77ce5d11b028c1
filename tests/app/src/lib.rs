//! Drives the real app in its real window, as a person would: by what can be seen and tapped.
//!
//! Each [`Stage`] has a display of its own that nobody sees, new folders and a web driver, and takes all
//! of it away again when it is dropped. It needs Xvfb and WebKitWebDriver, and the app built before.

pub mod app;
pub mod ended;
pub mod listener;
pub mod page;
pub mod photo;
pub mod record;
pub mod screens;
pub mod selectors;
pub mod stage;
pub mod walk;

pub use app::App;
pub use stage::Stage;

use std::future::Future;
use std::time::Duration;

/// The longest a whole check may take: one takes a few seconds, many times that on a busy machine.
const WHOLE: Duration = Duration::from_secs(300);

/// Runs a check to its end, or fails it when it hangs.
///
/// # Panics
/// When the check takes too long.
pub async fn within_reason<T>(check: impl Future<Output = T>) -> T {
    tokio::time::timeout(WHOLE, check).await.expect("the check hangs")
}
