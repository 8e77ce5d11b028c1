//! Laws of the tube list: it is a hint, so it removes nothing and betters no class.

use coldchassis_core::inspection::{Finding, Judge, Possible, assess};
use proptest::prelude::{prop_assert, prop_assert_eq, proptest};
use proptest::sample::select;

use crate::cases;
use crate::drafts::draft;

/// One list for each reading, and one that nobody knows; the first five are line-ups of the reference.
const LISTS: [&[&str]; 7] = [
    &["12SA7", "12SK7", "12SQ7", "50L6GT", "35Z5GT"],
    &["39/44", "36", "38", "1V"],
    &["12AX7", "6V6", "5Y3GT"],
    &["1R5", "1T4", "1S5", "3S4"],
    &["VC1", "VF7", "VL1", "VY1"],
    &["12SA7", "12SK7", "12SQ7", "25L6GT", "25L6GT"],
    &["QQ99"],
];

proptest! {
    #![proptest_config(cases(300))]

    #[test]
    fn a_list_of_tubes_removes_nothing_and_betters_no_class(draft in draft(8), list in select(&LISTS[..])) {
        let without = draft.findings();
        let mut with = without.clone();
        with.tubes = list.iter().map(|tube| (*tube).to_owned()).collect();
        let before = assess(&without, &mut Judge::of(&without));
        let after = assess(&with, &mut Judge::of(&with));
        prop_assert_eq!(before.consistent, after.consistent);
        prop_assert_eq!(&before.conflicts, &after.conflicts);
        prop_assert!(!before.treat_as.is_worse_than(after.treat_as), "{list:?} {before:?} {after:?}");
        prop_assert!(!before.could_be.is_worse_than(after.could_be), "{list:?}");
        prop_assert!(!after.rests_on.iter().any(|rests| rests.finding.name() == "tubes"));
        let sets = [&without, &with].map(|findings| Possible::after(findings).considered);
        prop_assert!(sets[0] == sets[1]);
        // Without a list, every finding of the draft is still there to be taken back.
        prop_assert!(with.list().into_iter().all(|finding: Finding| without.list().contains(&finding)));
    }
}
