# The record as a whole: given away, taken in, copied, put back, and what is done where it is damaged.

record-title = The record
record-see-note = Give it to another device, take one in, copies
record-what-to-do = What to do
record-what = All units with their inspections and photos, kept on this device.
record-busy = This can take a while. Please leave the app open.
record-file = { $name }, { $megabytes } MB
record-choose-inspections =
    { $count ->
        [0] No inspections
        [one] One inspection
       *[other] { $count } inspections
    }

## To another device

record-give = Give to another device
record-give-what = One file, a bundle, holds all units with their findings and photos. Any device with this program can take it in.
record-give-nothing = There are no units of your own yet, so there is nothing to give.
record-give-now = Save a bundle
record-giving = The bundle is being written…
record-given = Saved
record-take = Take in from another device
record-take-what = What a bundle holds is joined with what is here. Of two findings of the same thing the later one counts, and a unit that was deleted there goes here too.
record-take-now = Choose a bundle
record-taking = The bundle is being checked and taken in…
record-changed = Units that changed
record-changed-more =
    { $count ->
        [one] One more is in the list of units.
       *[other] { $count } more are in the list of units.
    }
record-list = List for a spreadsheet
record-list-what = One line for each unit, as CSV. It has no photos and cannot be taken in again.
record-list-now = Save the list
record-listing = The list is being written…
record-listed = Saved

## Copies. The figures are those of core/src/store/snapshot.rs; a check compares them.

record-copies = Copies
record-copies-when = The app makes a copy by itself after every 20 inspections, and before an update changes the record. The last 5 are kept, and 2 from before updates; once a unit is deleted, older copies go too.
record-copies-failed = A copy is due and could not be made. It is tried again by itself.
record-copies-none = There is no copy yet. Until there is one, save a bundle somewhere else.
record-copies-loading = Looking for copies…
record-copy = { $inspections }, { $megabytes } MB
record-copy-before-update = { $inspections }, { $megabytes } MB, before an update

## A copy put back in the place of a sound record

record-back-title = Put this copy back?
record-back-of = Copy of { $when }
record-back-gone = This copy is no longer there.
record-back-to-record = To the record
record-back-would = What would happen
record-back-replaces =
    { $units ->
        [0] The copy takes the place of the record. There are no units in it now.
        [one] The copy takes the place of the record, which has one unit now.
       *[other] The copy takes the place of the record, which has { $units } units now.
    }
record-back-since = What was entered or changed after the copy was made is no longer in the record.
record-back-kept = The record of now is kept as a file in the folder “damaged” beside it. The last 3 stay there, and so does the first of several tries that are no more than 7 days apart. The app itself cannot put that file back.
record-back-photos = Photos that the copy does not know stay on this device as long as a file is kept in that folder.
record-back-first = So that nothing is lost
record-back-first-what = Save a bundle first. Taken in afterwards, it brings back all units as they are now, with their photos.
record-back-now = Put the copy back
record-back-doing = The copy is being put back…
record-back-leave = Leave the record as it is
record-back-done = The copy is back
record-back-done-what = The copy of { $when } is the record now. The record of before is kept as a file in the folder “damaged” beside it.
record-copy-damaged = This copy is damaged itself. The record was left as it was. Choose another copy.

## A record that is damaged: what is shown in place of everything else

recovery-title = The record is damaged
recovery-what = Part of its file can no longer be read. Nothing more is written to it, and nothing is put in its place until you choose.
recovery-detail = What was found
recovery-looking = Looking for copies…
recovery-last = Last copy
recovery-none = There is no copy of the record. What can still be read of the damaged file can become a new record.
recovery-unlisted = The copies could not be looked for. There may be some: look again before you begin a new record. What can still be read can be saved in any case.
recovery-again = Look for copies again
recovery-main = Put the last copy in place
recovery-main-why = Best put it in place: whatever can still be read of the damaged file is added to it.
recovery-main-none = Begin a new record
recovery-save = Save what can be read first
recovery-save-what = Into a bundle, on a stick or another disk, joined with the last copy that is sound. The file that is there is only read. If all else fails, the bundle can be taken in later.
recovery-save-now = Save a bundle
recovery-saving = What can be read is being written…
recovery-other = Something else
recovery-other-copy = Copy of { $when }
recovery-new = Begin a new record
recovery-new-note = Without any copy

recovery-ask-copy = Put the copy of { $when } in place?
recovery-ask-new = Begin a new record?
recovery-would-copy = The copy takes the place of the file that is there.
recovery-would-new = An empty record takes the place of the file that is there.
recovery-add = Add what can still be read
recovery-add-note = of the file that is there
recovery-would-add = Whatever can still be read of that file is added.
recovery-would-not-add-copy = What was entered after the copy was made stays in that file only.
recovery-would-not-add-new = All that was entered stays in that file only.
recovery-would-keep = That file is kept in the folder “damaged” beside the record. The last 3 stay there, and so does the first of several tries that are no more than 7 days apart.
recovery-would-photos = Photos of which nothing can be read any more stay on this device as long as a file is kept in that folder.
recovery-do-copy = Put it in place
recovery-do-new = Begin the new record
recovery-doing = The record is being put together…
recovery-leave = Not yet
recovery-done = There is a record again
recovery-done-look = Look at the units that you worked on last: what is missing has to be found again before you rely on it.

## Files that are left alone

recovery-newer-title = Written by a newer version
recovery-newer-1 = Update the app on this device.
recovery-newer-2 = Then open it again: everything is as you left it.
recovery-newer-why = Copies are not offered here. The record is not damaged, and an older copy in its place would lack your last work.
recovery-foreign-title = This is not a record
recovery-foreign-what = In the place of the record there is a file of something else, or one whose beginning is destroyed. No copy of a record was found beside it.
recovery-foreign-1 = If the file was put there by mistake, close the app, move the file elsewhere, and open the app again.
recovery-foreign-2 = If the record is on a stick or another disk, look whether that is plugged in.
recovery-foreign-3 = Else begin a new record. The file is kept.
