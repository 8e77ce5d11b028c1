# Troubles of the record, supplies to choose, the demonstration.

error-no-unit = There is no such unit. It may have been deleted.
error-no-inspection = There is no such inspection. It may have been undone.
error-newer-file = This record was written by a newer version (form { $found }; this version knows { $known }). It was left as it is. Update the program to open it.
error-not-our-file = This file is not a record of this program. It was left as it is.
error-damaged = The record is damaged: { $detail }. Nothing was written to it. A copy from before can be put in its place.
error-damaged-beginning = The record is damaged: its beginning is gone. Nothing was written to it. A copy from before can be put in its place.
error-no-snapshot = There is no such copy of the record any more.
error-only-in-memory = This record is only in memory; there is no file to copy.
error-no-room = There is no room left on this device. What was stored before is kept; this was not stored. Make room and do it again.
error-read-only = The record, or the folder it is in, may only be read. What was stored before is kept; this was not stored.
error-storage = The record could not be read or written: { $detail }. Nothing that was stored is lost.

takes-kept-finding = takes the path of a finding that is there
takes-short-text = takes a text of at most { $high } characters

takes-proof = takes ready only when the proof of the repair is complete
takes-page-end = takes the end of a page as it was given

# How far the work on a unit has come.
work-to_inspect = To inspect
work-do_not_power = Do not power
work-awaiting_parts = Awaiting parts
work-in_repair = In repair
work-proof_open = Proof open
work-ready = Ready
work-handed_back = Handed back
queue-unknown = Not worked out

# A record that was put together anew.
recovered-from-copy = The copy of the record is in its place. The damaged file is kept beside it.
recovered-from-nothing = A new record is in its place. The damaged file is kept beside it.
recovered-added = { $events } events that the copy had not were read from the damaged file and added.
recovered-gone = { $places } places of the damaged file could not be read; what was in them is lost unless the copy had it.

list = { $items }

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
