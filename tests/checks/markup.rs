//! Looks through Svelte markup and TypeScript for text that a person would read.
//!
//! It knows just enough of both languages to tell text from code: tags, attributes, `{…}`, comments,
//! strings, templates and regular expressions.

use super::has_words;

/// Attributes and properties whose text is shown or read out.
const READ_OUT: [&str; 9] = [
    "aria-label",
    "aria-description",
    "aria-placeholder",
    "aria-roledescription",
    "aria-valuetext",
    "title",
    "placeholder",
    "alt",
    "label",
];

/// Attributes whose expressions hold class names and style rules, which look like words.
const STYLING: [&str; 2] = ["class", "style"];

/// A stray: its line, and its text.
pub type Stray = (usize, String);

/// The strays in a Svelte file.
pub fn strays_in_markup(text: &str) -> Vec<Stray> {
    let mut scan = Scan::of(text);
    scan.markup();
    scan.strays
}

/// The strays in a TypeScript file.
pub fn strays_in_script(text: &str) -> Vec<Stray> {
    let mut scan = Scan::of(text);
    scan.script(None);
    scan.strays
}

/// A sentence, not the name of a key or a selector: a capital or three words.
fn is_sentence(text: &str) -> bool {
    let words = text.split_whitespace().filter(|word| word.chars().any(char::is_alphabetic));
    has_words(text) && (text.trim_start().starts_with(char::is_uppercase) || words.count() >= 3)
}

struct Scan {
    chars: Vec<char>,
    at: usize,
    strays: Vec<Stray>,
}

impl Scan {
    fn of(text: &str) -> Self {
        Self { chars: text.chars().collect(), at: 0, strays: Vec::new() }
    }

    fn peek(&self) -> Option<char> {
        self.chars.get(self.at).copied()
    }

    fn next(&mut self) -> Option<char> {
        let next = self.peek();
        self.at += 1;
        next
    }

    fn sees(&self, text: &str) -> bool {
        text.chars().enumerate().all(|(place, c)| self.chars.get(self.at + place) == Some(&c))
    }

    /// Goes on to the end of a text, or of the file.
    fn skip_past(&mut self, text: &str) {
        while self.peek().is_some() && !self.sees(text) {
            self.at += 1;
        }
        self.at += text.chars().count();
    }

    fn report(&mut self, from: usize, text: &str) {
        let line = 1 + self.chars.iter().take(from).filter(|c| **c == '\n').count();
        self.strays.push((line, text.trim().to_owned()));
    }

    fn report_letters(&mut self, from: usize, text: &str) {
        if without_entities(text).chars().any(char::is_alphabetic) {
            let blanks = text.chars().take_while(|c| c.is_whitespace()).count();
            self.report(from + blanks, text);
        }
    }

    fn markup(&mut self) {
        let (mut text, mut from) = (String::new(), 0);
        while let Some(c) = self.peek() {
            let is_tag = c == '<'
                && self
                    .chars
                    .get(self.at + 1)
                    .is_some_and(|c| c.is_alphabetic() || "/!".contains(*c));
            if !is_tag && c != '{' {
                if text.is_empty() {
                    from = self.at;
                }
                text.push(c);
                self.at += 1;
                continue;
            }
            self.report_letters(from, &std::mem::take(&mut text));
            if c == '{' {
                self.expression(true);
            } else if self.sees("<!--") {
                self.skip_past("-->");
            } else {
                self.tag();
            }
        }
        self.report_letters(from, &text);
    }

    fn tag(&mut self) {
        let name: String = self.word(|c| c == '<' || c == '/' || c.is_alphanumeric());
        while let Some(c) = self.peek() {
            match c {
                '>' => {
                    self.at += 1;
                    break;
                }
                '{' => self.expression(true),
                c if c.is_whitespace() || c == '/' => self.at += 1,
                _ => self.attribute(),
            }
        }
        match name.as_str() {
            "<script" => self.script(Some("</script")),
            "<style" => self.skip_past("</style>"),
            _ => {}
        }
    }

    fn word(&mut self, belongs: impl Fn(char) -> bool) -> String {
        let mut word = String::new();
        while let Some(c) = self.peek().filter(|c| belongs(*c)) {
            word.push(c);
            self.at += 1;
        }
        word
    }

    fn attribute(&mut self) {
        let name = self.word(|c| !c.is_whitespace() && !"=/>{".contains(c));
        if name.is_empty() {
            self.at += 1;
        }
        if self.peek() != Some('=') {
            return;
        }
        self.at += 1;
        let looks_inside = !STYLING.contains(&name.as_str());
        let (from, mut text) = (self.at, String::new());
        let quote = self.peek().filter(|c| "\"'".contains(*c));
        self.at += usize::from(quote.is_some());
        while let Some(c) = self.peek() {
            let ends = quote.map_or(c.is_whitespace() || c == '>', |quote| c == quote);
            if ends {
                break;
            } else if c == '{' {
                self.expression(looks_inside);
            } else {
                text.push(c);
                self.at += 1;
            }
        }
        self.at += usize::from(quote.is_some());
        if READ_OUT.contains(&name.as_str()) {
            self.report_letters(from, &text);
        }
    }

    /// From one brace to the one that closes it.
    fn expression(&mut self, looks_inside: bool) {
        self.at += 1;
        let strays = self.strays.len();
        // A block's mark, as in `{#if …}` or `{/if}`, would read as a regular expression.
        if !self.sees("//") && !self.sees("/*") {
            self.word(|c| "#/:@".contains(c));
        }
        self.script(Some("}"));
        if !looks_inside {
            self.strays.truncate(strays);
        }
    }

    /// Script up to an end that stands outside strings, comments and inner braces.
    fn script(&mut self, end: Option<&str>) {
        let (mut depth, mut before) = (0_usize, None);
        while let Some(c) = self.peek() {
            if depth == 0 && end.is_some_and(|end| self.sees(end)) {
                self.skip_past(if end == Some("}") { "}" } else { ">" });
                return;
            }
            match c {
                '/' if self.sees("//") => self.skip_past("\n"),
                '/' if self.sees("/*") => self.skip_past("*/"),
                '/' if before.is_none_or(|c| "(,=:[!&|?{};+>".contains(c)) => {
                    self.regular_expression()
                }
                '"' | '\'' => self.string(c),
                '`' => self.template(),
                _ => {
                    depth = match c {
                        '{' => depth + 1,
                        '}' => depth.saturating_sub(1),
                        _ => depth,
                    };
                    self.at += 1;
                }
            }
            if !c.is_whitespace() {
                before = Some(c);
            }
        }
    }

    fn regular_expression(&mut self) {
        self.at += 1;
        let mut in_class = false;
        while let Some(c) = self.next() {
            match c {
                '\\' => self.at += 1,
                '[' => in_class = true,
                ']' => in_class = false,
                '\n' => return,
                '/' if !in_class => return,
                _ => {}
            }
        }
    }

    fn string(&mut self, quote: char) {
        let from = self.at;
        self.at += 1;
        let mut text = String::new();
        while let Some(c) = self.next() {
            match c {
                '\\' => text.extend(self.next()),
                c if c == quote || c == '\n' => break,
                c => text.push(c),
            }
        }
        if is_sentence(&text) {
            self.report(from, &text);
        }
    }

    fn template(&mut self) {
        let from = self.at;
        self.at += 1;
        let mut text = String::new();
        while let Some(c) = self.peek() {
            if self.sees("${") {
                self.at += 2;
                text.push_str("{}");
                self.script(Some("}"));
                continue;
            }
            self.at += 1;
            match c {
                '\\' => text.extend(self.next()),
                '`' => break,
                c => text.push(c),
            }
        }
        if is_sentence(&text) {
            self.report(from, &text);
        }
    }
}

/// `&nbsp;` and the like have letters, but show none.
fn without_entities(text: &str) -> String {
    let mut parts = text.split('&');
    let mut kept = parts.next().unwrap_or_default().to_owned();
    for part in parts {
        let rest = part.split_once(';').filter(|(name, _)| {
            !name.is_empty() && name.chars().all(|c| c.is_ascii_alphanumeric() || c == '#')
        });
        kept.push_str(rest.map_or(part, |(_, rest)| rest));
    }
    kept
}

#[test]
fn planted_text_in_markup_is_found_on_its_line() {
    for (planted, line) in [
        ("<p>Unplug</p>", 1),
        ("<p>\n  {words.x}\n  now\n</p>", 3),
        ("{#if a < b}yes{/if}", 1),
        ("<button\n  aria-label=\"Back\">{x}</button>", 2),
        ("<input placeholder='Name {x}' />", 1),
        ("<img alt=Radio>", 1),
        ("<Choice label=\"Continue\" on={() => go('x')} />", 1),
        ("<p>{ok ? \"Plug it in\" : ''}</p>", 1),
        ("<p>{`Leaks ${n} more than that`}</p>", 1),
        ("<script>\nconst a = 'Do not plug it in';\n</script>", 2),
        ("<style>p { color: red }</style>\n<p>red</p>", 2),
        ("<!-- a note -->\n\n<p>x</p>", 3),
        ("{#each list as item}{/each}done", 1),
    ] {
        let strays = strays_in_markup(planted);
        assert_eq!(strays.len(), 1, "{planted}: {strays:?}");
        assert_eq!(strays[0].0, line, "{planted}: {strays:?}");
    }
}

#[test]
fn planted_text_in_a_script_is_found() {
    for planted in [
        "const a = \"Do not plug it in\";",
        "const a = 'It\\'s still live';",
        "throw new Error(`cannot read ${file}, it is gone`);",
        "const a = text.replace(/\"/g, ''); const b = 'Look once more';",
        "const a = b / 2; const c = 'Look once more'; const d = e / 2;",
        "const a = `x ${f({ a: 'Look once more' })} y`;",
        "// it's a comment\nconst a = 'Look once more';",
    ] {
        let strays = strays_in_script(planted);
        assert_eq!(strays.len(), 1, "{planted}: {strays:?}");
    }
}

#[test]
fn code_is_not_taken_for_text() {
    for fine in [
        "<!-- a note --><p class=\"wide row tall\">{words.x}</p>",
        "<p class={on ? 'wide row tall' : ''} title={words.title}>&nbsp;{x}: 5 &middot; ·</p>",
        "{#snippet row(item: Item)}<Row {item} bind:value on:click={() => { go(item) }} />{/snippet}",
        "<script lang=\"ts\">\n  import { a } from './a'; // it's here\n  let b: Array<string> = [];\n</script>",
        "<style>\n  p::after { content: 'x' }\n</style>",
        "{@render children?.()}",
    ] {
        assert!(strays_in_markup(fine).is_empty(), "{fine}: {:?}", strays_in_markup(fine));
    }
    for fine in ["/* don't */ const a = 'question-plug';", "document.querySelector('main button')"]
    {
        assert!(strays_in_script(fine).is_empty(), "{fine}: {:?}", strays_in_script(fine));
    }
}
