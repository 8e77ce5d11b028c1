# Why a bundle was refused; the sentence that it was refused stands before it.

bundle-refused = The bundle was refused; nothing was changed. { $reason }
bundle-failed = The bundle could not be read or written; nothing was changed. { $reason }

bundle-not-one = It is not a bundle of this program, or it is damaged or cut short. Have it sent again.
bundle-newer = It was written by a newer version (form { $found }; this version knows { $known }). Update the program to take it in.
bundle-manifest = Its list of contents makes no sense: { $detail }.
bundle-name = It has a part with a name that no bundle has: { $name }.
bundle-link = It has a part that is not a plain file: { $name }.
bundle-twice = It has a part twice, or parts that overlap.
bundle-packing = A part is packed or locked in a way that bundles are not: { $name }.
bundle-bomb = A part would unpack to more than { $times } times its length: { $name }.
bundle-too-long = A part is longer than any such part: { $name }.
bundle-too-many = It has more than { $events } events or { $photos } photos.
bundle-missing = A part that its list names is missing: { $name }.
bundle-unlisted = It has a part that its list does not name: { $name }.
bundle-wrong-hash = A part is not what its list says, so it was damaged or changed: { $name }.
bundle-wrong-count = Its list counts { $said }, but there are { $found }.
bundle-line = Line { $line } of its events cannot be read: it is no event, or longer than { $most } bytes.
bundle-event = Line { $line } of its events does not fit: { $field }.
bundle-finding = Line { $line } of its events does not fit: { $field } { $takes }.
bundle-future = Line { $line } of its events was made more than a day from now. Check the date on both devices.
bundle-photo = A photo and the events do not belong together: { $name }.
bundle-bad-photo = A photo is not one of this program: { $name } { $takes }.
bundle-dangling = An event names what is not there: { $field } of { $event }.
bundle-bad-event = An event does not fit: { $field } of { $event }.
bundle-contradicts = An event is known here with other contents: { $event }. One of the two was changed.
bundle-io = { $detail }.

# A bundle that was written or taken in.
bundle-made = The bundle has { $units ->
    [0] no units
    [one] one unit
   *[other] { $units } units
 } and { $photos ->
    [0] no photos
    [one] one photo
   *[other] { $photos } photos
 }.
bundle-made-deleted = { $units ->
    [one] It also tells of one deleted unit, so that it goes where it is taken in.
   *[other] It also tells of { $units } deleted units, so that they go where it is taken in.
 }
bundle-made-lost = { $photos ->
    [one] One photo is not in it: its file is gone or damaged on this device.
   *[other] { $photos } photos are not in it: their files are gone or damaged on this device.
 }
bundle-taken-in = Taken in: { $units ->
    [0] no unit changed
    [one] one unit changed
   *[other] { $units } units changed
 }, { $photos ->
    [0] no new photos
    [one] one new photo
   *[other] { $photos } new photos
 }.
bundle-nothing-new = Nothing was changed: there was nothing in the bundle to add here.
bundle-deleted = { $units ->
    [one] One unit was deleted elsewhere and is gone here too, with all that was found of it.
   *[other] { $units } units were deleted elsewhere and are gone here too, with all that was found of them.
 }
bundle-late = { $events ->
    [one] One event is of a unit that was deleted here; it was left aside.
   *[other] { $events } events are of units that were deleted here; they were left aside.
 }
bundle-without = { $photos ->
    [one] One photo was left out of the bundle and is not here.
   *[other] { $photos } photos were left out of the bundle and are not here.
 }
