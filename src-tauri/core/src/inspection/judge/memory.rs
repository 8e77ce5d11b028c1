//! What a judge remembers of each arrangement.

use crate::arrangement::{ArrangementId, all};
use crate::hazard::Parts;

/// Takes over what was known of the arrangements that two knowledges of the parts judge alike.
pub(super) fn keep<T: Copy>(
    memory: &mut [Option<T>],
    known: &[Option<T>],
    (then, now): (Parts, Parts),
) {
    for ((slot, known), arrangement) in memory.iter_mut().zip(known).zip(all()) {
        if known.is_some() && then.agree_on(&now, arrangement) {
            *slot = *known;
        }
    }
}

/// What is known of an arrangement, worked out where nothing is.
pub(super) fn remembered<T: Copy>(
    memory: &mut [Option<T>],
    id: ArrangementId,
    work_out: impl FnOnce() -> T,
) -> T {
    let slot = memory.get_mut(usize::from(id.0));
    if let Some(Some(known)) = slot {
        return *known;
    }
    let found = work_out();
    if let Some(slot) = slot {
        *slot = Some(found);
    }
    found
}
