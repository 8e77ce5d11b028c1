//! The one window. It shows the embedded screens and goes nowhere else.

use tauri::webview::NewWindowResponse;
use tauri::{App, Url, WebviewWindowBuilder};

/// A proxy where nobody listens: port 9 is the discard service's (RFC 863; from memory), long out of use.
///
/// WebKit connects to where a link leads before it asks whether the page may go there, so refusing is
/// not enough: `no_network` among the checks hears it. Through this proxy nothing is reached at all.
const NOWHERE: &str = "http://127.0.0.1:9";

/// Opens the windows of the configuration, each shut in.
///
/// # Errors
/// The system gives no window or no web view.
pub fn open(app: &App) -> tauri::Result<()> {
    let nowhere = Url::parse(NOWHERE).map_err(tauri::Error::InvalidUrl)?;
    for settings in &app.config().app.windows {
        // The content security policy says nothing of links, new windows and downloads.
        WebviewWindowBuilder::from_config(app, settings)?
            .proxy_url(nowhere.clone())
            .on_navigation(is_our_own)
            .on_new_window(|_, _| NewWindowResponse::Deny)
            .on_download(|_, _| false)
            .build()?;
    }
    Ok(())
}

/// Whether an address is one of the embedded screens.
fn is_our_own(url: &Url) -> bool {
    match url.scheme() {
        "tauri" => url.host_str() == Some("localhost"),
        // Where the web view knows no schemes of an app's own: Windows and Android.
        "http" | "https" => url.host_str() == Some("tauri.localhost") && url.port().is_none(),
        _ => false,
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn only_the_embedded_screens_may_be_gone_to() {
        let goes = |url: &str| is_our_own(&Url::parse(url).unwrap());
        assert!(goes("tauri://localhost/"));
        assert!(goes("tauri://localhost/index.html#/units"));
        assert!(goes("http://tauri.localhost/"));
        for elsewhere in [
            "http://127.0.0.1:8000/",
            "https://example.org/",
            "http://tauri.localhost:8000/",
            "http://tauri.localhost.example.org/",
            "tauri://elsewhere/",
            "file:///etc/hostname",
            "data:text/html,x",
            "about:blank",
        ] {
            assert!(!goes(elsewhere), "{elsewhere}");
        }
    }
}
