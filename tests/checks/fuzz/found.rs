//! What was found once by the targets or while they were written, each with the least that shows it.

use coldchassis_core::workbench::{Code, QueueAsk};
use serde_json::json;

use super::readings::bench;

/// The place after the last one there is was worked out by adding one.
#[test]
fn a_page_after_the_last_place_there_can_be() {
    let bench = bench();
    for newest in [false, true] {
        let after = Some(i64::MAX.to_string());
        let page = bench.queue(&QueueAsk { after, newest, ..QueueAsk::default() });
        assert!(page.expect("a page").rows.is_empty());
    }
}

/// A NUL ended the order to the index in the middle of a quotation.
#[test]
fn a_search_with_a_nul_in_it() {
    let bench = bench();
    let text = "brown\0set".to_owned();
    bench.queue(&QueueAsk { text, ..QueueAsk::default() }).expect("a page");
}

/// A list that said one thing a hundred thousand times was stored as it was given, and made a line that no
/// device takes in from a bundle.
#[test]
fn a_list_that_says_one_thing_many_times() {
    let mut bench = bench();
    let many = vec!["outside".to_owned(); 100_000];
    let new = json!({"supply": {"volts": 120, "hertz": 60}, "access": many});
    let new = serde_json::from_value(new).expect("a unit");
    let problem = bench.create_unit(&new).expect_err("refused");
    assert_eq!((problem.code, problem.field.as_deref()), (Code::BadInput, Some("access")));
}
