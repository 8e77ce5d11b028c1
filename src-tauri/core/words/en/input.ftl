# What a field of an input file takes, when what it was given does not fit. Each stands after the
# field's name: "answers.plug: takes one of …".

error-field = { $field }: { $takes }

takes-an-object = takes an object of named fields
takes-required = is missing and has to be given
takes-known-keys = is not a field here; the fields are { $keys }
takes-one-of = takes one of { $ids }
takes-marks = takes a list of at most { $most } marks
takes-two-places = takes two places that are not the same
takes-points = takes { $count } points, each a pair of numbers from 0 to 1
takes-other-photo = takes another photo of this inspection, or nothing
takes-each-photo-once = takes every photo of this inspection, each once
takes-state-of-arrangement = takes a position of plug, switch and ground switch that this unit can have
takes-list-of = takes a list of { $ids }
takes-some-of = takes a list of one or more of { $ids }, or "cant_tell"
takes-alone = takes { $id } only when nothing else is in the list
takes-number-from-to = takes a number from { $low } to { $high }
takes-positive-below = takes a number above 0 and below { $bound }
takes-whole-number = takes a whole number from 0 to { $high }
takes-true-or-false = takes true or false
takes-true = takes true, or is left out
takes-tubes-elsewhere = takes "cant_tell" only; a list of tubes goes into the field tubes
takes-tube-types = takes a list of at most { $high } tube types, each a text of 1 to 40 characters
takes-ohms-or-ol = takes a number of ohms, 0 or more, or "OL" above the meter’s range
takes-no-direct-current = direct current is not covered: a supply has 15 to 400 hertz
takes-only-with-step-down = belongs to the feed step_down_auto only
takes-possible-near_pin = takes b where the isolation is isolating
takes-possible-line_capacitor = takes none where the isolation has no line capacitor
takes-possible-line_capacitor_class = takes ordinary where there is no line capacitor
takes-possible-reach = takes common_exposed only with line_floated or line_insulated
takes-utf8 = takes UTF-8 text
takes-json-object = is empty; takes a JSON object
takes-valid-json = takes valid JSON; it breaks off at line { $line }, column { $column }
takes-once = is given twice; a field takes one value
takes-readable-file = takes a file that can be read
takes-regular-file = takes a file or a pipe, not a directory
takes-at-most-bytes = takes at most { $high } bytes

list-pair = { $list }, { $next }
list-last = { $list } and { $next }
fault-none = no fault
not-checked-metal = whether the bare metal is on the chassis or on something worse
takes-offered-step = is not offered there: { $why }
takes-holds = takes whether it holds, true or false
takes-reading-of-line = takes what the meter shows, or that it is above its range
takes-positions-of-line = takes a reading for each position of plug and switch
