//! Documents for a shell: reports, hang tags, the text for a message and the list of all units.

use base64::Engine as _;
use base64::engine::general_purpose::STANDARD;
use chrono::{DateTime, Datelike, Timelike, Utc};
use serde::{Deserialize, Serialize};
use uuid::Uuid;

use super::error::{Code, Problem};
use super::kept;
use super::queue::unit_of;
use super::report_sheet::{SheetWords, Times};
use super::session::Workbench;
use super::tag_sheet::hang_tag;
use super::upkeep::ENGINE;
use super::views::{InspectionView, UnitView};
use crate::fields::FieldError;
use crate::report::{
    Origin, Paper, Photo, ReportError, Sheet, TagPaper, TagSheet, report, table, tags, text,
};
use crate::store::{QueueRow, UnitFilter};
use crate::words::Message;

/// The longest SVG that is taken as a drawing, bytes.
const LONGEST_DRAWING: usize = 2_000_000;
/// The most tags that are printed at once.
const MOST_TAGS: usize = 200;

/// How a report is made.
#[derive(Clone, Debug, Default, Deserialize, ts_rs::TS)]
#[serde(deny_unknown_fields, default)]
pub struct ReportAsk {
    /// What it is printed on.
    pub paper: Paper,
    /// The circuit picture as it is shown, SVG; nothing leaves it out.
    pub circuit: Option<GivenDrawing>,
    /// The chart as it is shown, SVG; nothing leaves it out.
    pub chart: Option<GivenDrawing>,
}

/// A drawing as the screens show it.
#[derive(Clone, Debug, Default, Deserialize, ts_rs::TS)]
#[serde(deny_unknown_fields)]
pub struct GivenDrawing {
    /// The SVG.
    pub svg: String,
    /// The same in words.
    pub says: String,
}

/// A document to be saved or shared.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, ts_rs::TS)]
pub struct DocumentView {
    /// A name that every file system takes.
    pub name: String,
    /// Its media type.
    pub media_type: String,
    /// Its bytes, base64.
    pub base64: String,
}

impl From<ReportError> for Problem {
    fn from(error: ReportError) -> Self {
        Self::new(Code::Storage, Message::new("error-report").text("why", error.to_string()))
    }
}

impl Workbench {
    /// The report of an inspection as PDF.
    ///
    /// # Errors
    /// There is no such inspection, a drawing cannot be read, or the record cannot be read.
    pub fn report(&mut self, inspection: Uuid, ask: &ReportAsk) -> Result<DocumentView, Problem> {
        for (field, drawing) in [("circuit", &ask.circuit), ("chart", &ask.chart)] {
            if drawing.as_ref().is_some_and(|drawing| drawing.svg.len() > LONGEST_DRAWING) {
                let most = LONGEST_DRAWING.to_string();
                let takes = Message::new("takes-drawing").text("most", most);
                return Err(FieldError::new(field, takes).into());
            }
        }
        let view = self.inspection(inspection)?;
        let sheet = self.sheet(&view, ask)?;
        let pdf = report(&sheet, ask.paper)?;
        Ok(self.document(&view.unit, "report-file-report", "pdf", &pdf))
    }

    /// The report of an inspection as text to paste into a message.
    ///
    /// # Errors
    /// There is no such inspection, or the record cannot be read.
    pub fn report_text(&mut self, inspection: Uuid) -> Result<String, Problem> {
        let view = self.inspection(inspection)?;
        let times = self.times(inspection)?;
        let words = SheetWords::new(&self.words);
        let blocks = words.brief(&view, &times);
        Ok(text(&Sheet { blocks, ..Sheet::default() }))
    }

    /// Hang tags of units that have been inspected, as PDF.
    ///
    /// # Errors
    /// A unit is not there or was never inspected; none or too many are asked for.
    pub fn tags(&mut self, units: &[Uuid], paper: TagPaper) -> Result<DocumentView, Problem> {
        let takes = || {
            let takes = Message::new("takes-units").text("most", MOST_TAGS.to_string());
            Problem::from(FieldError::new("units", takes))
        };
        if units.is_empty() || units.len() > MOST_TAGS {
            return Err(takes());
        }
        let made = self.made();
        let mut of = Vec::new();
        let mut last = None;
        for unit in units {
            let inspected = kept::last_with_something(&self.store, *unit)?;
            let inspected = inspected.map_or_else(|| Err(self.not_inspected(*unit)), Ok)?;
            let view = self.inspection(inspected.id)?;
            of.push(hang_tag(&view, &made, &self.words));
            last = Some(view.unit);
        }
        let origin = self.origin(self.words.say_id("report-file-tags"));
        let pdf = tags(&TagSheet { tags: of, origin }, paper)?;
        match last {
            Some(unit) if units.len() == 1 => {
                Ok(self.document(&unit, "report-file-tag", "pdf", &pdf))
            }
            _ => Ok(document(&self.words.say_id("report-file-tags"), "pdf", &pdf)),
        }
    }

    /// Why no tag is made: a unit that was never inspected, by its number; or one that is not there.
    fn not_inspected(&self, unit: Uuid) -> Problem {
        match self.store.unit(unit) {
            Ok(Some(unit)) => {
                let message = Message::new("takes-inspected").text("unit", unit.label());
                FieldError::new("units", message).into()
            }
            Ok(None) => Problem::no_unit(),
            Err(error) => error.into(),
        }
    }

    /// The list of all units as CSV.
    ///
    /// # Errors
    /// The record cannot be read.
    pub fn list_csv(&self) -> Result<DocumentView, Problem> {
        let say = |id: &str| self.words.say_id(id);
        let head = HEAD.map(say);
        let mut rows = Vec::new();
        let own = self.store.rows(&UnitFilter::default())?.into_iter().filter(|row| !row.unit.demo);
        for kept in own {
            let state = self.csv_state(&kept);
            let mut row = self.csv_row(&unit_of(kept));
            row.extend(state);
            rows.push(row);
        }
        let csv = table(&head, rows);
        Ok(document(&say("report-file-list"), "csv", &csv))
    }

    fn csv_row(&self, unit: &UnitView) -> Vec<String> {
        let say = |message: Option<Message>| {
            message.and_then(|message| self.words.find(&message)).unwrap_or_default()
        };
        let kind = unit.kind.as_ref().map(|kind| Message::new(format!("answer-kind-{kind}")));
        let class = unit.treat_as.as_ref().map(|class| Message::new(format!("class-{class}")));
        let basis = unit.basis.as_ref().map(|basis| Message::new(format!("report-basis-{basis}")));
        vec![
            unit.label.clone(),
            unit.name.clone(),
            unit.place.clone(),
            say(kind),
            class.map_or_else(|| self.words.say_id("queue-unknown"), |class| say(Some(class))),
            say(basis),
            when(unit.changed_at),
        ]
    }

    /// How far the work on a unit has come, since when, and who said so.
    fn csv_state(&self, row: &QueueRow) -> [String; 3] {
        let state = Message::new(format!("work-{}", row.state.id()));
        let since = row.unit.state_at.map(when).unwrap_or_default();
        [self.words.say(&state), since, row.unit.state_by.clone().unwrap_or_default()]
    }

    fn sheet(&mut self, view: &InspectionView, ask: &ReportAsk) -> Result<Sheet, Problem> {
        let grid = self.grid(view.id)?;
        let readings = self.meter_readings(view.id)?;
        let remedies = self.remedies(view.id)?;
        let unfit = self.unfit(view.id)?;
        let repair = if remedies.chosen.is_empty() || unfit.is_some() {
            None
        } else {
            let stack =
                serde_json::json!({"steps": remedies.chosen, "limit_ma": remedies.limit_ma});
            Some(self.remedy_stack(view.id, stack)?)
        };
        let proof = if repair.is_some() { Some(self.proof(view.id)?) } else { None };
        let photos = self.report_photos(view)?;
        let times = self.times(view.id)?;
        let words = SheetWords::new(&self.words);
        let mut blocks = words.first(view, &times, photos.first().cloned());
        blocks.extend(words.found(view, &readings));
        blocks.extend(words.pictures(photos, ask));
        blocks.extend(words.grid(&grid));
        blocks.extend(words.repair(&remedies, repair.as_ref(), proof.as_ref(), unfit));
        blocks.extend(words.end(view));
        let (label, name) = (&view.unit.label, &view.unit.name);
        let named = |id: &'static str| {
            let message = Message::new(id).text("label", label.clone()).text("name", name.clone());
            self.words.say(&message)
        };
        Ok(Sheet {
            origin: self.origin(named("report-title")),
            running: named("report-running"),
            foot: self.words.say_id("report-foot"),
            numbering: [
                self.words.say_id("report-page-before"),
                self.words.say_id("report-page-between"),
                String::new(),
            ],
            blocks,
        })
    }

    /// The photos of a report, passed through as they are stored; one whose file is gone is left out.
    fn report_photos(&self, view: &InspectionView) -> Result<Vec<Photo>, Problem> {
        let mut photos = Vec::new();
        for (place, photo) in view.photos.iter().enumerate() {
            let Ok(jpeg) = self.photo_bytes(&photo.sha256, false) else { continue };
            let caption = SheetWords::new(&self.words).caption(photo, place, view);
            let marks = super::report_marks::strokes(&photo.marks);
            photos.push(Photo { jpeg, size: (photo.width, photo.height), caption, marks });
        }
        Ok(photos)
    }

    fn origin(&self, title: String) -> Origin {
        let at = time((self.around.clock)());
        let of = |value: u32| u16::try_from(value).unwrap_or_default();
        let made = [
            u16::try_from(at.year()).unwrap_or_default(),
            of(at.month()),
            of(at.day()),
            of(at.hour()),
            of(at.minute()),
            of(at.second()),
        ];
        Origin {
            id: format!("{title} {}", (self.around.clock)()),
            title,
            language: self.words.language(),
            creator: self.creator(),
            made,
        }
    }

    /// What makes documents, with its version.
    fn creator(&self) -> String {
        self.words.say(&Message::new("report-creator").text("version", ENGINE))
    }

    fn times(&self, inspection: Uuid) -> Result<Times, Problem> {
        let began = self.find(inspection)?.0.started_at;
        Ok(Times { began, made: (self.around.clock)() })
    }

    fn made(&self) -> String {
        let made = Message::new("report-made")
            .text("date", when((self.around.clock)()))
            .text("creator", self.creator());
        self.words.say(&made)
    }

    fn document(&self, unit: &UnitView, what: &str, kind: &str, bytes: &[u8]) -> DocumentView {
        let what = self.words.say_id(what);
        let name = Message::new("report-file").text("label", unit.label.clone()).text("what", what);
        document(&self.words.say(&name), kind, bytes)
    }
}

/// The columns of the list.
const HEAD: [&str; 10] = [
    "report-list-label",
    "report-list-name",
    "report-list-place",
    "report-list-kind",
    "report-list-class",
    "report-list-basis",
    "report-list-changed",
    "report-list-state",
    "report-list-since",
    "report-list-by",
];

fn document(name: &str, kind: &str, bytes: &[u8]) -> DocumentView {
    let media_type = if kind == "csv" { "text/csv" } else { "application/pdf" };
    DocumentView {
        name: format!("{}.{kind}", file_name(name)),
        media_type: media_type.to_owned(),
        base64: STANDARD.encode(bytes),
    }
}

/// A name that every file system takes: letters, digits, dashes and underscores, none of the reserved ones.
fn file_name(name: &str) -> String {
    let clean = name
        .chars()
        .map(|letter| if letter.is_alphanumeric() || letter == '-' { letter } else { '_' });
    let clean: String = clean.take(LONGEST_NAME).collect();
    clean.trim_matches('_').to_owned()
}

/// Letters of a file's name, at most; every file system takes as many bytes and more.
const LONGEST_NAME: usize = 60;

fn time(at: i64) -> DateTime<Utc> {
    DateTime::from_timestamp_millis(at).unwrap_or_default()
}

/// A moment as year, month, day, hour and minute, UTC.
pub(super) fn when(at: i64) -> String {
    time(at).format("%Y-%m-%d %H:%M").to_string()
}
