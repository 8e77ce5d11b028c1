//! Plays a guided inspection of an invented unit: every question asked, its answer, the tag.

use coldchassis_core::workbench::{
    DEMO_UNIT, Entry, InspectionView, NewUnit, Problem, QuestionView, Workbench,
};
use serde_json::{Value, json};

use crate::print;

/// Plays the inspection, first from outside, then with the cover off.
pub fn play(bench: &mut Workbench) -> Result<(), Problem> {
    let say =
        |bench: &Workbench, id: &str| print::text(&print::paragraph(&bench.words().say_id(id)));
    say(bench, "demo-intro")?;
    say(bench, "caution-unplug-first")?;
    let mut view = bench.create_unit(&NewUnit {
        name: bench.words().say_id(DEMO_UNIT.name),
        place: bench.words().say_id(DEMO_UNIT.place),
        kind: Some(DEMO_UNIT.kind.to_owned()),
        supply: json!({"volts": 120, "hertz": 60, "volts_max": 127}),
        access: vec!["outside".to_owned()],
    })?;
    print::text(&format!("\n{}  {}  {}", view.unit.label, view.unit.name, view.unit.place))?;
    view = ask(bench, view)?;
    print::text(&print::tag(&view.tag, bench.words()))?;
    say(bench, "demo-cover-off")?;
    say(bench, "caution-stored-charge")?;
    let access = ["outside".to_owned(), "cover_off".to_owned()];
    view = bench.set_access(view.id, &access)?;
    view = ask(bench, view)?;
    say(bench, "demo-also")?;
    for question in view.also.clone() {
        view = answer(bench, &view, &question)?;
    }
    print::text("")?;
    print::text(&print::tag(&view.tag, bench.words()))?;
    say(bench, "demo-end")
}

/// Answers until nothing that may be asked can better the verdict.
fn ask(bench: &mut Workbench, mut view: InspectionView) -> Result<InspectionView, Problem> {
    while let Some(question) = view.question.clone() {
        view = answer(bench, &view, &question)?;
    }
    Ok(view)
}

fn answer(
    bench: &mut Workbench,
    view: &InspectionView,
    question: &QuestionView,
) -> Result<InspectionView, Problem> {
    let said = DEMO_UNIT.answers.iter().find(|answer| answer.question == question.id);
    let said = said.and_then(|answer| serde_json::from_str(answer.answer).ok());
    let said: Value = said.unwrap_or_else(|| json!("cant_tell"));
    print::text(&print::question(question, bench.words()))?;
    let after = match question.entry {
        Entry::Rated => bench.set_rated(view.id, said)?,
        _ => bench.answer(view.id, &question.id, said)?,
    };
    let asked = Some(&question.id);
    let found = after.findings.iter().find(|finding| finding.question.as_ref() == asked);
    let found = found.map(|finding| finding.found.clone()).unwrap_or_default();
    print::text(&print::answered(&found, &after, bench.words()))?;
    Ok(after)
}
