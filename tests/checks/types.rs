//! The TypeScript types of the interface are those of the views: generated, kept beside the interface.
//!
//! A view that changes without its type would let the interface read a field that is not there.
//! `UPDATE_TYPES=1` writes the files; without it they are compared, names and contents.

use std::collections::{BTreeMap, BTreeSet};
use std::fs;
use std::path::{Path, PathBuf};

use coldchassis_core::inspection::{Access, Question, ReadingId, ValueId};
use coldchassis_core::words::{Argument, Message};
use coldchassis_core::workbench::{
    AnswerView, AssessView, BundleView, ChargeView, ChartView, CircuitView, Code, DocumentView,
    Entry, ExposureView, FeedsView, FindingView, GridView, HeaterView, ImportView, InspectionView,
    InsulationView, LikelyView, MeasureView, NewUnit, PresetView, Problem, ProofView, QuestionView,
    QueueAsk, QueueCounts, QueueLine, QueueView, ReadingsView, RecoveredView, RegionView,
    RemediesFigures, RemediesView, RepairView, ReportAsk, RestsOnView, RowView, SnapshotView,
    StateView, Tag, TagPaper, TouchTestView, TubeHit, TubeRead, UnitView, WorstStateView,
};
use syn::visit::{self, Visit};
use ts_rs::{Config, TS};
use walkdir::WalkDir;

/// Each file's text by its path within a folder.
type Folder = BTreeMap<String, String>;

fn kept() -> PathBuf {
    PathBuf::from(env!("CARGO_MANIFEST_DIR")).join("../ui/src/lib/types")
}

/// Generates the type of each, and of all that they are made of.
macro_rules! export {
    ($config:expr, $($view:ty),+ $(,)?) => {
        $(<$view>::export_all($config).expect(stringify!($view));)+
    };
}

/// What comes out of the core, what goes in, and the ids that commands take.
fn generate(folder: &Path) {
    // `import type` with this extension is understood under every way of resolving modules, and by
    // `verbatimModuleSyntax`. JSON has no large integers, so none may become a bigint.
    let config = Config::new()
        .with_out_dir(folder)
        .with_import_extension(Some("js"))
        .with_large_int("number");
    export!(
        &config,
        AnswerView,
        AssessView,
        ExposureView,
        Entry,
        FindingView,
        HeaterView,
        TubeHit,
        TubeRead,
        InspectionView,
        LikelyView,
        PresetView,
        RegionView,
        QuestionView,
        ChargeView,
        InsulationView,
        FeedsView,
        GridView,
        ProofView,
        RemediesFigures,
        RemediesView,
        RepairView,
        ChartView,
        CircuitView,
        MeasureView,
        ReadingsView,
        QueueAsk,
        QueueView,
        QueueLine,
        QueueCounts,
        BundleView,
        DocumentView,
        ReportAsk,
        TagPaper,
        ImportView,
        SnapshotView,
        RecoveredView,
        TouchTestView,
        RestsOnView,
        RowView,
        StateView,
        Tag,
        UnitView,
        WorstStateView,
        Problem,
        Code,
        Message,
        Argument,
        NewUnit,
        Access,
        Question,
        ReadingId,
        ValueId,
    );
}

fn read(folder: &Path) -> Folder {
    let files = WalkDir::new(folder).into_iter().filter_map(Result::ok);
    let files = files.filter(|entry| entry.file_type().is_file());
    let entry = |entry: walkdir::DirEntry| {
        let name = entry.path().strip_prefix(folder).expect("it is inside");
        let name = name.to_string_lossy().replace('\\', "/");
        (name, fs::read_to_string(entry.path()).expect("a type is text"))
    };
    files.map(entry).collect()
}

fn write(folder: &Path, types: &Folder) {
    if folder.exists() {
        fs::remove_dir_all(folder).expect("old types can go");
    }
    for (name, text) in types {
        let path = folder.join(name);
        fs::create_dir_all(path.parent().expect("it has a folder")).expect("a folder can be made");
        fs::write(path, text).expect("a type can be written");
    }
}

/// What is missing, left over or different; nothing where both are the same.
fn differences(generated: &Folder, kept: &Folder) -> Vec<String> {
    let names: BTreeSet<&String> = generated.keys().chain(kept.keys()).collect();
    let difference = |name: &String| match (generated.get(name), kept.get(name)) {
        (Some(_), None) => Some(format!("{name} is missing")),
        (None, Some(_)) => Some(format!("{name} is left over")),
        (new, old) => (new != old).then(|| format!("{name} is not as generated")),
    };
    names.into_iter().filter_map(difference).collect()
}

fn generated() -> Folder {
    let folder = tempfile::tempdir().expect("a temporary folder");
    generate(folder.path());
    read(folder.path())
}

#[test]
fn the_kept_types_are_those_of_the_views() {
    let generated = generated();
    if std::env::var_os("UPDATE_TYPES").is_some_and(|value| value == "1") {
        write(&kept(), &generated);
    }
    let wrong = differences(&generated, &read(&kept()));
    assert!(wrong.is_empty(), "UPDATE_TYPES=1 writes them anew:\n{}", wrong.join("\n"));
}

/// Names of the types that derive a TypeScript type.
#[derive(Default)]
struct Typed(BTreeSet<String>);

impl Typed {
    fn add(&mut self, name: &syn::Ident, attributes: &[syn::Attribute]) {
        let derives = attributes.iter().filter(|attribute| attribute.path().is_ident("derive"));
        let is_typed = |attribute: &syn::Attribute| {
            let mut found = false;
            let looked = attribute.parse_nested_meta(|derived| {
                found |= derived.path.segments.last().is_some_and(|last| last.ident == "TS");
                Ok(())
            });
            looked.expect("a derive is a list of paths");
            found
        };
        if derives.into_iter().any(is_typed) {
            self.0.insert(name.to_string());
        }
    }
}

impl<'ast> Visit<'ast> for Typed {
    fn visit_item_struct(&mut self, item: &'ast syn::ItemStruct) {
        self.add(&item.ident, &item.attrs);
        visit::visit_item_struct(self, item);
    }

    fn visit_item_enum(&mut self, item: &'ast syn::ItemEnum) {
        self.add(&item.ident, &item.attrs);
        visit::visit_item_enum(self, item);
    }
}

#[test]
fn no_view_of_the_workbench_is_forgotten() {
    let folder = PathBuf::from(env!("CARGO_MANIFEST_DIR")).join("../src-tauri/core/src/workbench");
    let mut typed = Typed::default();
    for text in read(&folder).values() {
        typed.visit_file(&syn::parse_file(text).expect("the core is Rust"));
    }
    assert!(typed.0.contains("InspectionView") && typed.0.contains("Code"), "{:?}", typed.0);
    let generated = generated();
    let forgotten: Vec<&String> =
        typed.0.iter().filter(|name| !generated.contains_key(&format!("{name}.ts"))).collect();
    assert!(forgotten.is_empty(), "not generated: {forgotten:?}");
}

#[test]
fn every_file_says_that_it_is_generated_and_imports_types_only() {
    let mut imports = 0;
    for (name, text) in generated() {
        assert!(text.starts_with("// This file was generated by [ts-rs]"), "{name}");
        for line in text.lines().filter(|line| line.starts_with("import")) {
            assert!(
                line.starts_with("import type {") && line.ends_with(".js\";"),
                "{name}: {line}"
            );
            imports += 1;
        }
    }
    assert!(imports > 10, "{imports} imports looked at");
}

#[test]
fn every_number_is_a_number() {
    let generated = generated();
    for (file, field) in [
        ("UnitView.ts", "changed_at: number"),
        ("FindingView.ts", "at: number"),
        ("AssessView.ts", "consistent: number"),
        ("AssessView.ts", "margin: number"),
        ("Supply.ts", "volts: number"),
    ] {
        assert!(generated[file].contains(field), "{file} lacks {field}:\n{}", generated[file]);
    }
    for (name, text) in &generated {
        let code = text.lines().filter(|line| !line.trim_start().starts_with(['/', '*']));
        assert!(!code.clone().any(|line| line.contains("bigint")), "{name} has a bigint");
    }
}

#[test]
fn a_changed_a_missing_and_a_left_over_file_are_noticed() {
    let folder = tempfile::tempdir().expect("a temporary folder");
    let generated = generated();
    write(folder.path(), &generated);
    assert_eq!(differences(&generated, &read(folder.path())), Vec::<String>::new());

    let tag = folder.path().join("Tag.ts");
    fs::write(&tag, generated["Tag.ts"].replacen("string", "number", 1)).expect("a change");
    assert_eq!(differences(&generated, &read(folder.path())), ["Tag.ts is not as generated"]);
    fs::remove_file(&tag).expect("a removal");
    fs::write(folder.path().join("Old.ts"), "export type Old = string;").expect("an addition");
    let wrong = differences(&generated, &read(folder.path()));
    assert_eq!(wrong, ["Old.ts is left over", "Tag.ts is missing"]);
}
