# Troubles of the record, supplies to choose, the demonstration.

error-no-unit = There is no such unit. It may have been deleted.
error-no-inspection = There is no such inspection. It may have been undone.
error-newer-file = This record was written by a newer version (form { $found }; this version knows { $known }). It was left as it is. Update the program to open it.
error-not-our-file = This file is not a record of this program. It was left as it is.
error-damaged = The record is damaged: { $detail }. It is left as it is until you choose what takes its place: a copy from before, where there is a sound one, or what can still be read.
error-damaged-beginning = The record is damaged: its beginning is gone. It is left as it is until you choose what takes its place: a copy from before, where there is a sound one, or a new record.
error-no-snapshot = There is no such copy of the record any more.
error-nothing-readable = There is nothing to save: nothing can be read of the file that is there, and no sound copy holds anything. No bundle was written.
error-only-in-memory = This record is only in memory; there is no file to copy.
error-no-room = There is no room left on this device. What was stored before is kept; this was not stored. Make room and do it again.
error-read-only = The record, its photos or the folder they are in may only be read. What was stored before is kept; this was not stored.
error-storage = The record could not be read or written: { $detail }. Try again. If you had just entered something, look whether it is there.

# A file that a person saves somewhere.
file-no-room = There is no room left where it was to go, so nothing was written there. Make room, or choose another place.
file-barred = Nothing may be written there. Choose another place.
file-no-folder = That folder is not there. Choose another place.
file-failed = The file could not be written: { $detail }. Choose another place.
# $line is a proof- message.
takes-line-in-turn = takes lines in their turn: nothing is done at live parts before this is shown: { $line }
takes-base64 = takes a file as base64 text

takes-kept-finding = takes the path of a finding that is there
takes-short-text = takes a text of at most { $high } characters

takes-page-end = takes the end of a page as it was given

# How far the work on a unit has come.
work-to_inspect = To inspect
work-do_not_power = Do not power
work-awaiting_parts = Awaiting parts
work-in_repair = In repair
work-proof_open = Proof open
work-ready = Ready
work-handed_back = Handed back
queue-unknown = Look again

# A record that was put together anew.
recovered-from-copy = The copy is the record now. The file that stood there is kept beside it.
recovered-from-nothing = A new record is in its place. The file that stood there is kept beside it.
recovered-added = { $events ->
    [0] Nothing that could be read of that file had to be added.
    [one] One event that the copy had not was read from that file and added.
   *[other] { $events } events that the copy had not were read from that file and added.
 }
recovered-read = { $events ->
    [0] Nothing that could be read of that file had to be added.
    [one] One event was read from that file and added.
   *[other] { $events } events were read from that file and added.
 }
recovered-nothing-read = There was nothing in that file that could be read.
# Of the file that stood there, or of the one that a bundle was made from.
recovered-gone = { $places ->
    [one] One event of the file could not be read; it is lost unless the copy had it.
   *[other] { $places } events of the file could not be read; they are lost unless the copy had them.
 }
recovered-gone-for-good = { $places ->
    [one] One event of the file could not be read; it is lost.
   *[other] { $places } events of the file could not be read; they are lost.
 }
recovered-doubtful = { $places ->
    [one] One place in the file is empty, and it cannot be told why: an event may be lost there, or was deleted before.
   *[other] Up to { $places } events may be lost besides: so many places in the file are empty, and it cannot be told what was lost there and what was deleted before.
 }
recovered-uncounted = Where the file ended cannot be told, so more may be lost than can be counted.

# What a bundle rests on that was made from a damaged file.
bundle-rests-on-copy = It holds the copy of { $time } UTC, and what else could be read of the file that is there.
bundle-rests-on-file = It holds only what could be read of the file that is there: no sound copy was found.

list = { $items }
# What stands between the whole and its parts in a figure.
decimal-mark = .

preset-120v_60hz = 120 V, 60 Hz: North America
preset-230v_50hz = 230 V, 50 Hz: Europe and most of the world
preset-240v_50hz = 240 V, 50 Hz: older British and Australian supply
preset-100v_50hz = 100 V, 50 Hz: eastern Japan
preset-100v_60hz = 100 V, 60 Hz: western Japan
preset-110v_60hz = 110 V, 60 Hz: plates of the 1930s
preset-115v_60hz = 115 V, 60 Hz: plates of the 1930s to 1950s
preset-117v_60hz = 117 V, 60 Hz: plates of the 1940s to 1960s

demo-radio-name = Shelf radio, brown case
demo-radio-place = Stall 14

value-measured = { $value }, measured
value-marked = { $value }, as marked
