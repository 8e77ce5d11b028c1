//! What a report says, from the views that the screens show.

use super::grid::GridView;
use super::photos::PhotoView;
use super::proof::{ProofLineView, ProofView};
use super::reading_views::ReadingsView;
use super::repair_views::{RemediesView, RepairView};
use super::reports::{ReportAsk, when};
use super::upkeep::ENGINE;
use super::views::InspectionView;
use crate::figure::Source;
use crate::hazard::Signal;
use crate::report::{Block, Drawing, Photo, Row, Table, Verdict};
use crate::words::{Message, Words};

/// The share of the width that the circuit picture and the chart take.
const CIRCUIT: f32 = 0.55;
const CHART: f32 = 1.0;

/// When an inspection began, and when it is told of; UTC milliseconds.
pub(super) struct Times {
    pub(super) began: i64,
    pub(super) made: i64,
}

/// Puts views into the blocks of a report.
pub(super) struct SheetWords<'a> {
    words: &'a Words,
}

impl<'a> SheetWords<'a> {
    pub(super) const fn new(words: &'a Words) -> Self {
        Self { words }
    }

    fn say(&self, id: &str) -> String {
        self.words.say_id(id)
    }

    fn heading(&self, id: &str) -> Block {
        Block::Heading(self.say(id))
    }

    fn heads(&self, ids: &[&str]) -> Vec<String> {
        ids.iter().map(|id| self.say(id)).collect()
    }

    /// A heading over lines; nothing where there are none.
    fn list(&self, id: &str, lines: &[String]) -> Vec<Block> {
        if lines.is_empty() {
            return Vec::new();
        }
        vec![self.heading(id), Block::List(lines.to_vec())]
    }

    fn verdict(&self, view: &InspectionView, photo: Option<Photo>) -> Verdict {
        let tag = &view.tag;
        let text = |text: &Option<String>| text.clone().unwrap_or_default();
        let current = tag.current.as_ref().map(|current| {
            let of = Message::new("report-current-of")
                .text("state", text(&tag.state))
                .text("supply", text(&tag.supply));
            let figure = [tag.after.clone(), Some(current.clone())];
            let figure = figure.into_iter().flatten().collect::<Vec<_>>().join(" ");
            [figure, self.words.say(&of)]
        });
        Verdict {
            label: view.unit.label.clone(),
            name: view.unit.name.clone(),
            signal_word: tag.signal_word.clone(),
            is_notice: tag.signal == Signal::Notice,
            title: tag.title.clone(),
            current,
            reason: tag.reason.iter().chain(&tag.severity).cloned().collect(),
            now: self.say("report-now"),
            permission: tag.permission.clone(),
            photo,
        }
    }

    /// The first page: the verdict, what it warns of, and what is next.
    pub(super) fn first(
        &self,
        view: &InspectionView,
        times: &Times,
        photo: Option<Photo>,
    ) -> Vec<Block> {
        let tag = &view.tag;
        let mut blocks = vec![Block::Verdict(Box::new(self.verdict(view, photo)))];
        blocks.extend(self.times(view, times).into_iter().map(Block::Note));
        if view.unit.demo {
            blocks.push(Block::Note(self.say("report-demo")));
        }
        let cautions: Vec<String> = tag.standing.iter().chain(&tag.overlays).cloned().collect();
        blocks.push(Block::Cautions(cautions));
        blocks.extend(self.list("report-conflicts", &tag.conflicts));
        let next: Vec<String> = std::iter::once(&tag.next).chain(&tag.further).cloned().collect();
        blocks.extend(self.list("report-next", &next));
        blocks.extend(self.list("report-not-checked", &tag.not_checked));
        blocks
    }

    /// When it was inspected and this was made, and what a later inspection finds.
    fn times(&self, view: &InspectionView, times: &Times) -> Vec<String> {
        let began = Message::new("report-when")
            .text("began", when(times.began))
            .text("made", when(times.made));
        let later = view.others.iter().filter(|other| other.at > times.began);
        let later = later.max_by_key(|other| other.at).map(|other| {
            let class = other.unit.treat_as.as_ref();
            let class = class.map(|class| Message::new(format!("class-{class}-inline")));
            Message::new("report-later")
                .text("when", when(other.at))
                .message("class", class.unwrap_or_else(|| Message::new("queue-unknown")))
        });
        [Some(began), later].into_iter().flatten().map(|one| self.words.say(&one)).collect()
    }

    /// What fits into a message.
    pub(super) fn brief(&self, view: &InspectionView, times: &Times) -> Vec<Block> {
        let mut blocks = self.first(view, times, None);
        blocks.push(Block::Paragraph(String::new()));
        blocks.push(Block::Paragraph(self.say("report-foot")));
        blocks
    }

    /// Findings and readings.
    pub(super) fn found(&self, view: &InspectionView, readings: &ReadingsView) -> Vec<Block> {
        if view.findings.is_empty() {
            return Vec::new();
        }
        let row = |finding: &super::finding_view::FindingView| Row {
            cells: vec![
                finding.name.clone(),
                finding.found.clone(),
                finding.author.clone(),
                when(finding.at),
            ],
            heavy: false,
        };
        let head = self.heads(&[
            "report-found-question",
            "report-found-answer",
            "report-found-by",
            "report-found-when",
        ]);
        let rows = view.findings.iter().map(row).collect();
        let mut blocks = vec![
            self.heading("report-found"),
            Block::Table(Table { head, rows, widths: vec![3.4, 4.0, 1.6, 2.0] }),
        ];
        let said = readings.readings.iter().filter(|reading| reading.kept.is_some());
        let said: Vec<String> = said.filter_map(|reading| reading.means.clone()).collect();
        if !said.is_empty() {
            blocks.push(Block::List(said));
        }
        blocks
    }

    /// What a photo shows: its caption, else what was asked, else its number.
    pub(super) fn caption(&self, photo: &PhotoView, place: usize, view: &InspectionView) -> String {
        if !photo.caption.is_empty() {
            return photo.caption.clone();
        }
        let of = |path: &String| view.findings.iter().find(|finding| finding.path == *path);
        let name = photo.finding.as_ref().and_then(of).map(|finding| finding.name.clone());
        let number = Message::new("report-photo-unnamed").text("number", (place + 1).to_string());
        name.unwrap_or_else(|| self.words.say(&number))
    }

    /// Photos and drawings.
    pub(super) fn pictures(&self, photos: Vec<Photo>, ask: &ReportAsk) -> Vec<Block> {
        let mut blocks = Vec::new();
        // The first of them stands beside the verdict.
        if photos.len() > 1 {
            blocks.push(self.heading("report-photos"));
            blocks.push(Block::Photos(photos.into_iter().skip(1).collect()));
        }
        let given =
            [("report-circuit", &ask.circuit, CIRCUIT), ("report-chart", &ask.chart, CHART)];
        for (id, drawing, share) in given {
            if let Some(drawing) = drawing {
                blocks.push(self.heading(id));
                let (svg, says) = (drawing.svg.clone(), drawing.says.clone());
                blocks.push(Block::Drawing(Drawing { svg, says, share }));
            }
        }
        blocks
    }

    /// Every position with every single fault.
    pub(super) fn grid(&self, grid: &GridView) -> Vec<Block> {
        if grid.columns.is_empty() {
            return Vec::new();
        }
        let mut head = vec![self.say("report-grid-fault")];
        head.extend(grid.columns.iter().map(|column| column.names.join(", ")));
        let cell = |cell: &super::grid::CellView| {
            let figure = Message::new("report-grid-cell")
                .text("figure", cell.figure.clone().unwrap_or_default())
                .text("word", cell.word.clone());
            self.words.say(&figure)
        };
        let rows = grid.rows.iter().map(|row| Row {
            cells: std::iter::once(row.name.clone()).chain(row.cells.iter().map(cell)).collect(),
            heavy: row.cells.iter().any(|cell| cell.quoted),
        });
        let mut widths = vec![2.2];
        widths.extend(grid.columns.iter().map(|_| 1.4));
        let table = Table { head, rows: rows.collect(), widths };
        let mut blocks = vec![self.heading("report-grid")];
        blocks.extend(grid.notes.iter().cloned().map(Block::Note));
        blocks.push(Block::Table(table));
        blocks.push(Block::List(grid.arrangement.clone()));
        blocks
    }

    /// The repair that was chosen, with its parts and its proof; else the shortest way.
    pub(super) fn repair(
        &self,
        remedies: &RemediesView,
        repair: Option<&RepairView>,
        proof: Option<&ProofView>,
        unfit: Option<Message>,
    ) -> Vec<Block> {
        let mut blocks = vec![self.heading("report-repair")];
        let line =
            |id: &'static str, line: &str| self.words.say(&Message::new(id).text("line", line));
        blocks.push(Block::Paragraph(line("report-before", &remedies.before.line)));
        let Some(repair) = repair else {
            let unfit = unfit.map(|why| Message::new("report-repair-unfit").message("why", why));
            let told = unfit.unwrap_or_else(|| Message::new("report-no-repair"));
            blocks.push(Block::Paragraph(self.words.say(&told)));
            let way = remedies.shortest.as_ref().map(|way| line("report-shortest", &way.line));
            blocks.extend(way.or_else(|| remedies.no_way.clone()).map(Block::Paragraph));
            return blocks;
        };
        let row = |step: &super::repair_views::StepView| Row {
            cells: vec![
                step.name.clone(),
                step.after.line.clone(),
                step.worse.clone().unwrap_or_default(),
            ],
            heavy: step.worse.is_some(),
        };
        let head =
            self.heads(&["report-repair-step", "report-repair-after", "report-repair-worse"]);
        let rows = repair.steps.iter().map(row).collect();
        blocks.push(Block::Table(Table { head, rows, widths: vec![3.0, 4.0, 2.0] }));
        blocks.extend(self.list("report-remaining", &repair.after.remaining));
        blocks.extend(self.parts(repair));
        blocks.extend(proof.map(|proof| self.proof(proof)).unwrap_or_default());
        blocks.push(Block::Cautions(
            remedies.cautions.iter().chain(&remedies.last).cloned().collect(),
        ));
        blocks
    }

    fn parts(&self, repair: &RepairView) -> Vec<Block> {
        if repair.parts.is_empty() {
            return Vec::new();
        }
        let row = |part: &super::repair_views::PartNeedView| Row {
            cells: vec![
                part.name.clone(),
                part.size.clone().unwrap_or_default(),
                part.notes.join(" "),
            ],
            heavy: false,
        };
        let head = self.heads(&["report-parts-what", "report-parts-size", "report-parts-notes"]);
        let rows = repair.parts.iter().map(row).collect();
        let table = Table { head, rows, widths: vec![2.2, 2.2, 4.6] };
        vec![self.heading("report-parts"), Block::Table(table)]
    }

    fn proof(&self, proof: &ProofView) -> Vec<Block> {
        let none = self.say("report-none");
        let row = |line: &ProofLineView| Row {
            cells: vec![
                line.name.clone(),
                line.limit.clone(),
                line.entered.clone().unwrap_or_else(|| none.clone()),
                line.mark_says.clone(),
            ],
            heavy: line.mark == crate::remedy::ProofMark::Failed,
        };
        let head = self.heads(&[
            "report-proof-line",
            "report-proof-limit",
            "report-proof-entered",
            "report-proof-mark",
        ]);
        let rows = proof.lines.iter().map(row).collect();
        let mut blocks = vec![
            self.heading("report-proof"),
            Block::Paragraph(proof.says.clone()),
            Block::Table(Table { head, rows, widths: vec![3.0, 2.4, 2.4, 1.2] }),
        ];
        let compared = proof.compared.as_ref().map(|compared| compared.sentences.as_slice());
        blocks.extend(self.list("report-compared", compared.unwrap_or_default()));
        blocks
    }

    /// What it rests on, what it could be, where the figures come from, and which version worked it out.
    pub(super) fn end(&self, view: &InspectionView) -> Vec<Block> {
        let tag = &view.tag;
        let could: Vec<String> = tag.could_be.iter().chain(&tag.likely).cloned().collect();
        let mut blocks = self.list("report-could-be", &could);
        blocks.extend(self.list("report-rests-on", &tag.rests_on));
        blocks.push(self.heading("report-basis"));
        blocks.extend(tag.figures.iter().cloned().map(Block::Note));
        let engine = Message::new("report-engine")
            .text("version", ENGINE)
            .count("count", view.verdict.consistent as u64);
        blocks.push(Block::Note(self.words.say(&engine)));
        let source = |source: &Source| {
            self.words.say(&Message::new(format!("figure-source-{}", source.id())))
        };
        blocks.push(Block::List(Source::ALL.iter().map(source).collect()));
        blocks
    }
}
