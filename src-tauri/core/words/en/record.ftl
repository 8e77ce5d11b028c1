# Troubles of the record, supplies to choose, the demonstration.

error-no-unit = There is no such unit. It may have been deleted.
error-no-inspection = There is no such inspection. It may have been undone.
error-newer-file = This record was written by a newer version (form { $found }; this version knows { $known }). It was left as it is. Update the program to open it.
error-not-our-file = This file is not a record of this program. It was left as it is.
error-storage = The record could not be read or written: { $detail }. Nothing that was stored is lost.

takes-kept-finding = takes the path of a finding that is there
takes-short-text = takes a text of at most { $high } characters

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
