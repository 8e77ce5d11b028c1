//! Texts that nobody would type: whatever comes in, nothing panics and no figure is senseless.
//!
//! A minute of random texts; `COLDCHASSIS_STRINGS=10000000` tries that many instead. Texts are arbitrary
//! characters, pieces of type numbers, real names with mistakes, and lists of such.

use std::sync::atomic::{AtomicU64, Ordering};
use std::time::{Duration, Instant};

use bolero::{ValueGenerator, check, produce};
use coldchassis_core::heaters::{Rating, Study, Tube, catalogue, read_label, study, suggest};

/// How long random texts are tried.
const TIME: Duration = Duration::from_secs(20);

/// What type numbers and labels are made of, and what stands near it on a keyboard.
const PIECES: [&str; 72] = [
    "1", "2", "3", "5", "6", "7", "12", "14", "25", "35", "50", "117", "0", "01", "999999", "A",
    "B", "C", "E", "G", "GT", "H", "K", "L", "N", "P", "R", "S", "SK", "U", "UX", "V", "X", "Y",
    "Z", "WA", "lamp", "cord", "ohm", "x", "2x", "x2", "×", "Ж", "Ц", "Э", "П", "Н", "ё", "Ё", "С",
    "-", "–", "/", ",", ";", " ", "\n", "\t", ".", "(", ")", "#", "Ω", "\u{3a9}", "&", "+", "ß",
    "İ", "\u{301}", "\u{200b}", "🔌",
];

static TRIED: AtomicU64 = AtomicU64::new(0);

/// Arbitrary bytes as a text, each kind of text in turn.
fn text(kind: u8, bytes: &[u8]) -> String {
    match kind % 6 {
        0 => String::from_utf8_lossy(bytes).into_owned(),
        1 => pieces(bytes),
        2 => mistaken(bytes),
        3 => bytes.chunks(5).map(|chunk| mistaken(chunk) + separator(chunk)).collect(),
        4 if bytes.first().is_some_and(|first| *first < 3) => pieces(bytes).repeat(300),
        _ => mistaken(bytes),
    }
}

fn pieces(bytes: &[u8]) -> String {
    bytes.iter().map(|byte| PIECES[usize::from(*byte) % PIECES.len()]).collect()
}

fn separator(bytes: &[u8]) -> &'static str {
    let marks = [" ", ", ", "\n", "/", ";", " and ", "  ", ""];
    marks[usize::from(bytes.last().copied().unwrap_or_default()) % marks.len()]
}

/// A name of the list with characters put in, taken out, replaced or swapped.
fn mistaken(bytes: &[u8]) -> String {
    let (place, edits) = bytes.split_at(bytes.len().min(2));
    let place = place.iter().fold(0, |place, byte| place * 256 + usize::from(*byte));
    let tube = &catalogue()[place % catalogue().len()];
    let name = tube.names().nth(place % tube.names().count()).unwrap_or_default();
    let mut letters: Vec<char> = name.chars().collect();
    for edit in edits.chunks(3).take(4) {
        let [how, at, what] = [0, 1, 2].map(|n| edit.get(n).copied().unwrap_or_default());
        let at = usize::from(at) % (letters.len() + 1);
        let new = PIECES[usize::from(what) % PIECES.len()].chars().next().unwrap_or('1');
        match how % 4 {
            0 => letters.insert(at, new),
            1 if at < letters.len() => letters[at] = new,
            2 if at < letters.len() => drop(letters.remove(at)),
            3 if at > 0 && at < letters.len() => letters.swap(at - 1, at),
            _ => {}
        }
    }
    letters.into_iter().collect()
}

fn is_sound(rating: Rating) -> bool {
    [rating.volts, rating.amperes].into_iter().flatten().all(is_positive)
}

fn is_positive(figure: f64) -> bool {
    figure.is_finite() && figure > 0.0
}

fn look_up(text: &str) {
    let tube = Tube::of(text);
    // What is longer than any type number may be cut.
    let whole = text.trim().chars().count() > 100 || tube.entered == text.trim();
    assert!(whole && text.trim().starts_with(&tube.entered), "{tube:?}");
    assert!(tube.ratings().all(is_sound) && tube.ohms.is_none_or(is_positive), "{tube:?}");
}

fn offer(text: &str, most: usize) {
    let hits = suggest(text, most);
    assert!(hits.len() <= most, "{} hits of {most}", hits.len());
    for (place, hit) in hits.iter().enumerate() {
        assert!(hit.tube.names().any(|name| name == hit.name), "{hit:?}");
        let again = hits.iter().skip(place + 1).any(|other| other.tube.name == hit.tube.name);
        assert!(!again, "{} twice", hit.tube.name);
    }
}

fn read(text: &str) {
    let read = read_label(text);
    assert!(read.len() <= 200, "{} tubes", read.len());
    for written in read {
        assert!(!written.written.is_empty(), "an empty tube");
        assert_eq!(written.tube, Tube::of(&written.written));
    }
}

fn add_up(types: &[&str], line: f64) {
    let study = study(types, line);
    assert_eq!(study.parts.len(), types.len());
    assert!(study.sum_volts.is_finite() && study.sum_volts >= 0.0, "{} V", study.sum_volts);
    let along = study.path_volts;
    assert!(along.is_finite() && (0.0..=study.sum_volts + 1e-9).contains(&along), "{study:?}");
    assert!(study.amperes.is_none_or(|amperes| amperes.is_finite() && amperes >= 0.0), "{study:?}");
    assert!(study.string_ohm().is_none_or(is_positive), "{study:?}");
    for part in &study.parts {
        assert!(is_sound(part.rating), "{part:?}");
    }
    resistances(&study);
}

fn resistances(study: &Study) {
    if let Some(dropper) = study.dropper() {
        let figures = [dropper.volts, dropper.ohms, dropper.watts, dropper.watts_to_choose()];
        assert!(figures.into_iter().all(is_positive), "{study:?}");
    }
    if let Some(reading) = study.plug_reading() {
        let cold = reading.cold;
        let figures = [cold.low, cold.usual, cold.high];
        assert!(figures.into_iter().all(is_positive), "{study:?}");
        assert!(cold.low <= cold.usual && cold.usual <= cold.high, "{study:?}");
        assert!(reading.hot_ohm.is_finite() && reading.hot_ohm >= 0.0, "{study:?}");
    }
}

/// Line voltages that the findings file takes, from the least to the most.
const LINES: [f64; 6] = [117.0, 1.0, 100.0, 127.0, 230.0, 1000.0];

fn all_of(kind: u8, bytes: &[u8]) {
    let text = text(kind, bytes);
    look_up(&text);
    offer(&text, usize::from(kind / 6) % 9);
    read(&text);
    let types: Vec<&str> = text.split_whitespace().take(40).collect();
    add_up(&types, LINES[usize::from(kind) % LINES.len()]);
    TRIED.fetch_add(1, Ordering::Relaxed);
}

#[test]
fn no_text_makes_a_panic_or_a_senseless_figure() {
    let wanted: Option<usize> =
        std::env::var("COLDCHASSIS_STRINGS").ok().map(|count| count.parse().expect("a count"));
    let texts = (produce::<u8>(), produce::<Vec<u8>>().with().len(0_usize..120));
    let target = check!().with_generator(texts.map_gen(|text| text)).with_max_len(4096);
    let start = Instant::now();
    let run = |(kind, bytes): &(u8, Vec<u8>)| all_of(*kind, bytes);
    match wanted {
        Some(count) => target.with_iterations(count).for_each(run),
        None => target.with_test_time(TIME).for_each(run),
    }
    let tried = TRIED.load(Ordering::Relaxed);
    println!("{tried} texts in {:.0} s", start.elapsed().as_secs_f64());
    let least = wanted.map_or(10_000, |count| count as u64);
    assert!(tried >= least, "only {tried} texts were tried");
}
