//! A bundle taken apart and a device to send it to with something wrong.

use super::*;

/// A bundle of one unit with a photo, taken apart, and a device that has another unit.
pub(super) struct Trap {
    pub apart: Apart,
    pub victim: Device,
    pub sent: PathBuf,
    _sender: Device,
}

impl Trap {
    pub fn new() -> Self {
        let mut sender = Device::new("shop", 1);
        let place = sender.create("Kitchen set", false);
        sender.answer(place, "plug", "two_equal_blades");
        sender.photograph(place, 10);
        let (path, _) = sender.bundle(&Leaving::All);
        let mut victim = Device::new("phone", 2);
        let own = victim.create("Own", false);
        victim.photograph(own, 99);
        let sent = victim.folder.path().join("sent.bundle");
        Self { apart: Apart::of(&path), victim, sent, _sender: sender }
    }

    /// Takes in what lies in `sent`; it must be refused and must change nothing.
    pub fn refused(&mut self, what: &str) -> BundleError {
        let before = (self.victim.views(), self.victim.pictures());
        let taken = self.victim.take(&self.sent);
        let refusal = match taken {
            Err(refusal) => refusal,
            Ok(taken) => panic!("{what} was taken in: {taken:?}"),
        };
        assert!(refusal.is_refusal(), "{what}: {refusal}");
        let words = crate::words::Words::of("en");
        assert!(words.find(&refusal.message()).is_some(), "{what}: {refusal:?} has no words");
        assert_eq!((self.victim.views(), self.victim.pictures()), before, "{what}");
        refusal
    }

    pub fn with(&mut self, apart: &Apart, what: &str) -> BundleError {
        apart.write(&self.sent);
        self.refused(what)
    }

    pub fn with_bytes(&mut self, bytes: &[u8], what: &str) -> BundleError {
        std::fs::write(&self.sent, bytes).unwrap();
        self.refused(what)
    }

    pub fn bytes(&self) -> Vec<u8> {
        self.apart.write(&self.sent);
        std::fs::read(&self.sent).unwrap()
    }

    /// With one event changed, the rest in order.
    pub fn with_event(
        &mut self,
        index: usize,
        change: impl Fn(&mut Value),
        what: &str,
    ) -> BundleError {
        let mut events = self.apart.events();
        change(&mut events[index]);
        let apart = self.apart.with_events(&events);
        self.with(&apart, what)
    }

    pub fn place_of(&self, subject: &str) -> usize {
        let events = self.apart.events();
        let found =
            events.iter().position(|event| event["subject"].as_str().unwrap().contains(subject));
        found.unwrap()
    }
}
