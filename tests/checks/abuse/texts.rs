//! Texts that mean something to whatever they pass through: a page, a database, a sentence, a printer, a
//! spreadsheet, a file system.

/// Each fits a name or a place. None begins or ends in a space, because that is trimmed.
pub const TEXTS: [&str; 40] = [
    "<script>document.title='x'</script>",
    "<img src=x onerror=alert(1)>",
    "\"><svg/onload=alert(1)>",
    "</b></title><h1>Live</h1>",
    "&lt;b&gt; &amp; &#x41; &nbsp;",
    "{@html name} {name} ${name} {{name}}",
    "'); DROP TABLE event; --",
    "' OR '1'='1",
    "%' UNION SELECT * FROM unit --",
    "? ?1 :a @b $c",
    "{ $label } { $x }",
    "{ -term } { \"}\" }",
    "{ $x -> [one] live *[other] none }",
    "class-live = Nothing wrong",
    "class-live",
    "report-title",
    "\u{202e}gpj.exe \u{202c} after",
    "\u{202e}turned and never ended",
    "\u{2066}begun",
    "ended\u{2069}\u{2069} twice",
    "\u{200f}\u{200e}\u{61c}marks\u{200b}\u{feff}",
    "רדיו ישן 220 V",
    "راديو قديم (110)",
    "nul\u{0}in the middle",
    "bell\u{7} escape\u{1b}[31m red \u{1b}]0;title\u{7}",
    "line one\nline two\r\nline three\ttab",
    "paragraph\u{2029}separator\u{2028}line",
    "🔌⚡️👩🏽‍🔧 plug",
    "e\u{301}\u{301}\u{301}\u{327} Z\u{361}a\u{489}lgo",
    "ﷺ ﬁ Ǆ ß İ ı",
    "日本語のラジオ",
    "=1+1",
    "=HYPERLINK(\"http://x\",\"y\")",
    "+1+1",
    "-1+1",
    "@SUM(A1:A9)",
    "＝1＋1",
    "a,b;c\"d\"\"e'f",
    "../../etc/passwd C:\\x NUL.txt",
    "NEAR(a b, 2) AND NOT words : * ^ - + (",
];

/// The same cut to a number of letters, as a caption or a type of tube takes it.
pub fn cut(text: &str, letters: usize) -> String {
    let cut: String = text.chars().take(letters).collect();
    cut.trim().to_owned()
}

/// What comes back of a text: its ends are trimmed, nothing else is done to it.
#[test]
fn no_text_begins_or_ends_in_a_space() {
    for text in TEXTS {
        assert_eq!(text.trim(), text);
        assert!(text.chars().count() <= 200, "{text:?}");
    }
}
