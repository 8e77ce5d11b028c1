//! What is kept of a unit, read from a store: by the workbench, or by whoever works beside it.

use std::collections::BTreeMap;

use serde_json::{Map, Value, json};
use uuid::Uuid;

use super::error::Problem;
use super::proof::{PROOF, take_repairs};
use super::repairs::CHOSEN;
use super::session::LEFT_OPEN;
use crate::inspection::{Findings, ReadingId, ValueId, read_findings};
use crate::store::{Finding, Inspection, Store, Unit};

/// An inspection with its unit.
pub(super) fn find(store: &Store, inspection: Uuid) -> Result<(Inspection, Unit), Problem> {
    let found = store.inspection(inspection)?;
    let found = found.ok_or_else(Problem::no_inspection)?;
    let unit = store.unit(found.unit)?.ok_or_else(Problem::no_unit)?;
    Ok((found, unit))
}

/// The findings of an inspection, put together from the record.
pub(super) fn read(
    store: &Store,
    inspection: &Inspection,
    unit: &Unit,
) -> Result<Findings, Problem> {
    let mut file = Map::new();
    if let Some(supply) = &unit.supply {
        file.insert("supply".to_owned(), supply.clone());
    }
    if let Some(access) = &inspection.access {
        file.insert("access".to_owned(), access.clone());
    }
    for finding in store.findings(inspection.id)? {
        match finding.key.split_once('.') {
            None => {
                file.insert(finding.key, finding.value);
            }
            Some((group, key)) => {
                let group = file.entry(group).or_insert_with(|| json!({}));
                if let Value::Object(group) = group {
                    group.insert(key.to_owned(), finding.value);
                }
            }
        }
    }
    // Values that were looked for in vain are the record's own; a findings file has no word for them.
    let left_open = file.remove(LEFT_OPEN);
    take_repairs(&mut file);
    let mut findings = read_findings(Value::Object(file))?;
    if let Some(Value::Object(values)) = left_open {
        findings.plate_left_open = values.contains_key("rated");
        findings.left_open = values.keys().filter_map(|value| ValueId::of(value)).collect();
        let readings = values.keys().filter_map(|reading| ReadingId::of(reading));
        findings.readings_left_open = readings.collect();
    }
    Ok(findings)
}

/// The last inspection that anything was found in: one that was only begun, as by a slip of the
/// finger, must not hide what is known of the unit.
pub(super) fn last_with_something(
    store: &Store,
    unit: Uuid,
) -> Result<Option<Inspection>, Problem> {
    let all = store.inspections(unit)?;
    if let [newest, _, ..] = all.as_slice() {
        for inspection in &all {
            if has_something(store, inspection.id)? {
                return Ok(Some(inspection.clone()));
            }
        }
        return Ok(Some(newest.clone()));
    }
    Ok(all.into_iter().next())
}

/// Whether anything was found in an inspection.
pub(super) fn has_something(store: &Store, inspection: Uuid) -> Result<bool, Problem> {
    let found = !store.findings(inspection)?.is_empty();
    Ok(found || !store.photos(inspection)?.is_empty())
}

/// The repair that was chosen, among what was found in an inspection; nothing where none was.
pub(super) fn chosen(kept: &[Finding]) -> Option<&Finding> {
    kept.iter().find(|kept| kept.key == CHOSEN)
}

/// What was entered of a proof, by line, since the repair was chosen: of another repair, or before it, it
/// shows nothing.
pub(super) fn entries(store: &Store, inspection: Uuid) -> Result<BTreeMap<String, Value>, Problem> {
    let kept = store.findings(inspection)?;
    let chosen = chosen(&kept).map(|kept| kept.at);
    let line = |kept: Finding| {
        let line = kept.key.strip_prefix(PROOF)?.strip_prefix('.')?.to_owned();
        chosen.is_none_or(|chosen| kept.at >= chosen).then_some((line, kept.value))
    };
    Ok(kept.into_iter().filter_map(line).collect())
}
