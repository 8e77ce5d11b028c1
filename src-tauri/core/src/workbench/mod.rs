//! The one door for every shell: commands in, views out, in the inspector's language.
//!
//! Shells hold no rule of their own. Everything a run depends on besides its input, the store, the
//! clock and the source of ids, is passed in, so that any run can be repeated.

mod bench_test_views;
mod carrying;
mod chart;
mod chart_devices;
mod chart_views;
mod circuit;
mod circuit_place;
mod circuit_walk;
mod commands;
mod demo;
mod demo_units;
mod error;
mod feeds;
mod file_views;
mod finding_view;
mod giving;
mod grid;
mod heater_views;
mod heater_words;
mod heaters;
mod insulation_test;
mod kept;
mod parts_words;
mod photo_marks;
mod photo_measure;
mod photo_text;
mod photos;
mod proof;
mod question_views;
mod queue;
mod reading_views;
mod reading_words;
mod readings;
mod ready;
mod recovery;
mod regions;
mod remedies_file;
mod remedy_words;
mod repair_views;
mod repairs;
mod report_marks;
mod report_sheet;
mod reports;
mod search_words;
mod session;
mod simulated;
mod stored_charge;
mod tag;
mod tag_sheet;
mod touch_says;
mod touch_test;
mod touch_words;
mod tube_words;
mod turns;
mod undo;
mod upkeep;
mod views;

pub use crate::heaters::{Known, Place as HeaterPlace};
pub use crate::report::{Paper, TagPaper};
pub use crate::simulation::{Figures, Row};
pub use bench_test_views::{
    ChargeLevel, ChargeLimitView, ChargeView, InsulationView, ProtectionView, TouchPositionView,
    TouchTestView,
};
pub use carrying::{BundleView, ExportWork, ImportView, ImportWork, look_at_bundle};
pub use chart::chart;
pub use chart_views::{
    ChartBeside, ChartCase, ChartCut, ChartDevice, ChartLine, ChartPoint, ChartView, ChartZone,
    Guard,
};
pub use circuit::{CircuitView, FaultChoice, Flips, PartLabel};
pub use circuit_walk::WalkStep;
pub use commands::NewUnit;
pub use demo::{DEMO_UNIT, DemoAnswer, DemoUnit};
pub use error::{Code, Problem};
pub use feeds::{FeedView, FeedsView};
pub use file_views::{
    AssessView, ExposureView, LikelyView, RestsOnView, RowView, StateView, WorstStateView,
    assess_file, exposure_file, person,
};
pub use finding_view::FindingView;
pub use giving::save_text;
pub use grid::{CellLevel, CellView, GridColumn, GridRow, GridView};
pub use heater_views::{HeaterDrawing, HeaterView, NamedFigure, TubeHit, TubeRead, TubeRow};
pub use heaters::{HeaterFigures, heater_figures};
pub use photo_measure::{BladesSay, BladesView, MeasureView, OfferedAnswer};
pub use photo_text::take_in;
pub use photos::PhotoView;
pub use proof::{ComparedView, ProofLineView, ProofView};
pub use question_views::{AnswerView, Entry, QuestionView, question_view};
pub use queue::{ClassCount, QueueAsk, QueueCounts, QueueLine, QueueView, StateCount};
pub use reading_views::{
    ExpectedView, MeterView, PlugDrawing, ProbeView, ReadingView, ReadingsView,
};
pub use readings::{RangeView, readings_file};
pub use recovery::{RecoveredView, Recovery, SnapshotView};
pub use regions::{RegionView, regions};
pub use remedies_file::{
    AfterFigures, CutFigures, ModificationFigures, RemediesFigures, StackFigures, StandingFigures,
    remedies_file,
};
pub use remedy_words::RemedyWords;
pub use repair_views::{
    PartNeedView, RemediesView, RemedyAfter, RemedyView, RepairView, StackView, StandingView,
    StepView,
};
pub use reports::{DocumentView, GivenDrawing, ReportAsk};
pub use session::{Surroundings, Workbench};
pub use simulated::simulated;
pub use tag::{Tag, tag};
pub use turns::Turns;
pub use upkeep::{Judged, Keeper, LookWork, SnapshotWork};
pub use views::{InspectionView, OtherView, PresetView, UnitView, presets};
