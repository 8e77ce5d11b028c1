//! A live listener on this machine: whatever reaches it has left the app.

use std::sync::{Arc, Mutex};

use tokio::io::{AsyncReadExt, AsyncWriteExt};
use tokio::net::{TcpListener, TcpStream};

/// Listens until it is dropped, and remembers what each connection asked for.
pub struct Listener {
    port: u16,
    heard: Arc<Mutex<Vec<String>>>,
    task: tokio::task::JoinHandle<()>,
}

impl Listener {
    /// A new one, on a free port.
    ///
    /// # Panics
    /// When no port is free.
    pub async fn new() -> Self {
        let listener = TcpListener::bind(("127.0.0.1", 0)).await.expect("a port is free");
        let port = listener.local_addr().expect("a port has a number").port();
        let heard = Arc::new(Mutex::new(Vec::new()));
        let task = tokio::spawn(listen(listener, Arc::clone(&heard)));
        Self { port, heard, task }
    }

    /// Where it listens.
    pub const fn port(&self) -> u16 {
        self.port
    }

    /// Shows that it is live: a request from outside the app arrives.
    ///
    /// # Panics
    /// When it does not.
    pub async fn prove(&self) {
        let mut stream = TcpStream::connect(("127.0.0.1", self.port)).await.expect("it listens");
        stream.write_all(b"GET /proof HTTP/1.1\r\n\r\n").await.expect("it takes a request");
        let mut answer = String::new();
        stream.read_to_string(&mut answer).await.expect("it answers");
        assert_eq!(self.heard(), ["GET /proof"], "the listener is not live");
        self.heard.lock().expect("nobody panicked").clear();
    }

    /// The first words of each request since the proof; empty for a connection that asked nothing.
    ///
    /// # Panics
    /// Never: nothing panics while it holds the lock.
    pub fn heard(&self) -> Vec<String> {
        self.heard.lock().expect("nobody panicked").clone()
    }
}

impl Drop for Listener {
    fn drop(&mut self) {
        self.task.abort();
    }
}

async fn listen(listener: TcpListener, heard: Arc<Mutex<Vec<String>>>) {
    while let Ok((stream, _)) = listener.accept().await {
        tokio::spawn(answer(stream, Arc::clone(&heard)));
    }
}

async fn answer(mut stream: TcpStream, heard: Arc<Mutex<Vec<String>>>) {
    // Noted before a word is read: a bare connection counts too.
    let place = {
        let mut heard = heard.lock().expect("nobody panicked");
        heard.push(String::new());
        heard.len() - 1
    };
    let mut bytes = [0; 1024];
    let read = stream.read(&mut bytes).await.unwrap_or(0);
    let request = String::from_utf8_lossy(&bytes[..read]);
    let words: Vec<&str> = request.split_whitespace().take(2).collect();
    if let Some(noted) = heard.lock().expect("nobody panicked").get_mut(place) {
        *noted = words.join(" ");
    }
    let empty = b"HTTP/1.1 200 OK\r\nContent-Type: text/html\r\nContent-Length: 0\r\nConnection: close\r\n\r\n";
    // Whoever asked may have gone.
    let _ = stream.write_all(empty).await;
}
