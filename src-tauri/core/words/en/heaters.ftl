# Heaters: what a list of tubes adds up to, and what that hints at. Never proof.
# Figures come in already formatted, with their unit.

## What the list reads as

heaters-nothing = No tubes yet
heaters-series_on_line = Reads as a string straight across the line
heaters-series_with_dropper = Reads as a string with a dropper
heaters-parallel_transformer = Reads as heaters on a transformer winding
heaters-battery = Reads as battery tubes
heaters-undecided = The list alone does not tell
heaters-string_tubes = Tubes of strings, but they do not add up to one

# In a line beside the verdict. $heading is one of the readings above, $suggests one of those below.
heaters-hint = Tubes: { $heading }. { $suggests } Never proof.

## How the volts add up
# $sum heater volts, $line line voltage, $share a percentage, $path volts along one path.

heaters-sum-nothing = Enter the tubes, and their heater volts are put beside the line voltage.
heaters-sum-over = { $sum } of heaters on { $line }: { $share } over. A sum from 25 % under to 8 % over the line counts as straight across it: labels are rounded, and heaters stand some 10 %.
heaters-sum-under = { $sum } of heaters on { $line }: { $share } under. A sum from 25 % under to 8 % over the line counts as straight across it: labels are rounded, and heaters stand some 10 %.
heaters-sum-even = { $sum } of heaters on { $line }: they meet the line.
heaters-sum-dropper = { $sum } of heaters on { $line }. { $left } is left: something in series has to take it up.
heaters-sum-barretter = { $sum } of heaters on { $line }. The barretter takes up what is left, and holds the current.
heaters-sum-branches = { $sum } of heaters, but the string branches: { $path } along one path, on { $line }.
heaters-sum-rectified = { $sum } of battery filaments, fed from the rectifier through a resistor (about 2 kΩ, 5 W is usual). The rectifier’s own heater stands on the line.
heaters-sum-parallel = Every heater takes a low voltage by itself. Side by side they need one or more windings, and the sum of { $sum } means nothing.
heaters-sum-battery = Battery filaments, 5 V or less. The sum of { $sum } means nothing while they stand side by side.
heaters-sum-undecided = { $sum } in all, if they stood in one string, on { $line }.
heaters-sum-missing = Not counted, for nothing is known of the heater: { $tubes }.

## What it suggests

heaters-suggests-nothing = A list can hint at a set without a transformer. It is never proof.
heaters-suggests-series_on_line = A hint at a set without a transformer, whose metal can be on the line. Treat it so until it is shown otherwise.
heaters-suggests-series_with_dropper = A hint at a set without a transformer: a resistor, a ballast, a line cord of resistance wire or a tap takes up the rest. Its metal can be on the line. Never shorten such a cord.
heaters-suggests-parallel_transformer = A hint at a transformer for the heaters. It says nothing of the rest: the plate supply can still come straight off the line.
heaters-suggests-battery = A hint at battery tubes. Sets for line and battery have the same ones, with a rectifier that is no tube: this is no sign that there is no line inside.
heaters-suggests-undecided = No hint either way. More tubes, or the whole label, may tell.
heaters-suggests-string_tubes = Some of these were made for sets without a transformer, whose metal can be on the line. Treat it so until it is shown otherwise. A swapped tube, a missing one or another line voltage can make the sum wrong.

## What no list can prove

heaters-unproved = What the list cannot prove:
heaters-unproved-metal = What the metal is joined to, and which pin the string ends on.
heaters-unproved-isolated = A one-to-one transformer can feed the very same string. Only the transformer itself tells.
heaters-unproved-plate = A winding for the heaters does not isolate the plate supply. Only tracing tells.
heaters-unproved-both = A set for line and battery can have this very list.
heaters-unproved-label = Labels list what once was in it. Tubes get changed, and strings rewired.

## What cannot be as listed

clash-current = { $tube } draws { $amperes } and cannot stand in a { $others } string.
clash-over = { $sum } of heaters on { $line }: too much for one string on this line.
clash-branches = They could stand in { $count } equal branches, in series with the others.

## Figures, each with its name and a note

figure-current = Current of the string
figure-current-parallel = Current of all heaters
figure-current-parallel-note = Rectifiers with a winding of their own are in it.
figure-dropper = Dropper, if this is the whole list
figure-dropper-value = { $ohms }, { $watts }
figure-dropper-note = For { $volts }. Choose one for { $choose } or more: it gets hot. Fitting it is a job for a qualified person.
figure-own-dropper = Dropper for { $tube } by itself
figure-capacitor = Or a capacitor in series
figure-capacitor-note = On alternating current of { $hertz } only, with { $volts } across it. It shows no direct-current path from pin to pin.
figure-diode = Or a diode
figure-diode-value = about 0.71 of the line
figure-diode-note = A diode in series leaves about { $volts } to the heaters, which is near their sum.
figure-cold = Ohmmeter, pin to pin, cold
figure-range = about { $usual } ({ $low } to { $high })
figure-cold-note = Unplugged, switch on, all tubes in, cold for ten minutes, nothing else across the line. One open heater, lamp or cord reads OL.
figure-cold-note-dropper = With a dropper of { $ohms } counted in. Unplugged, switch on, all tubes in, cold for ten minutes, nothing else across the line. One open heater, lamp or cord reads OL.
figure-cold-note-rectified = Unplugged, switch on, cold for ten minutes. Only the rectifier’s own heater is across the line. In the battery position it reads OL.
figure-hot = The same string, hot
figure-hot-note = Worked out from the rated figures. A cold reading is about a seventh of it.
figure-primary = Ohmmeter, pin to pin
figure-primary-low = 4 to 15 Ω
figure-primary-high = 20 to 60 Ω
figure-primary-note = Unplugged, switch on. The primary of a small radio’s transformer. A large amplifier’s reads less. From memory, with little certainty.
figure-other = On another line voltage
figure-other-value = { $amperes } on { $volts }
figure-other-note = A heater’s voltage goes with the square of its current.

heaters-caution = Unplug it before any reading, and measure nothing that is plugged in. Capacitors keep a charge: with the cover off, discharge them through a resistor and measure that it is gone first.

## A tube’s heater

tube-heater = { $volts }, { $amperes }
tube-heater-volts = { $volts }
tube-heater-amperes = { $amperes }, voltage not known
tube-heater-ohms = { $ohms }
tube-heater-ohms-taken = { $ohms }, { $volts } here
tube-heater-other = { $heater }, connected the other way
tube-heater-cold = no heater
tube-heater-barretter = holds { $amperes }
tube-heater-unknown = heater not known
tube-same = = { $names }

## What a tube is

tube-role-converter = converter
tube-role-rf = radio-frequency amplifier
tube-role-detector = detector
tube-role-triode = triode
tube-role-pentode = pentode
tube-role-triode_pentode = triode and pentode
tube-role-output = output tube
tube-role-rectifier = rectifier
tube-role-rectifier_output = rectifier and output tube
tube-role-eye = tuning eye
tube-role-diode = diode
tube-role-damper = damper diode
tube-role-regulator = regulator
tube-role-ballast = ballast or line cord
tube-role-barretter = barretter
tube-role-lamp = dial lamp
tube-role-unknown = type not in the list

## Where its figures come from, and how far they were checked

tube-source = { $mark }: { $sources }
tube-source-by-rule = By rule, not from a list
tube-source-none = Nothing is known of it
tube-mark-verified = Seen in print
tube-mark-memory_high = From memory
tube-mark-memory_medium = From memory, not checked in print
tube-mark-memory_low = From memory, with little certainty
tube-source-manuals = receiving-tube manuals of the period
tube-source-list_1989 = a list of tube types circulated as text, 1989
tube-source-soviet_handbook = a Soviet handbook of electron tubes, 1981
tube-source-design_data = data of a public amplifier-design library
tube-source-japanese_line_ups = a table of Japanese line-ups; volts from the type number
tube-source-battery_sets = pages on battery sets
tube-source-soviet_battery = a note on Soviet battery tubes
tube-source-tube_journal = a tube journal, July 2000
tube-source-data_sheet = current data sheets
tube-source-heater_page = pages on single heaters
tube-source-repair_page = a repair report
tube-source-line_cord_page = a page on resistance line cords
tube-source-string_page = pages on amplifiers with a string
tube-source-restored_set = the heater table of a restored set
tube-source-measured_set = a measured set
tube-source-measured_tube = published measurements
tube-source-amplifier_page = documentation of an amplifier
tube-source-history_page = pages on the history of tubes
tube-source-tap_page = a page on tapped rectifiers
tube-source-rule = the rule of type numbers
tube-source-lamps = lists of dial lamps

doubt-low_certainty = Remembered with little certainty.
doubt-from_number = Its voltage is taken from the type number.
doubt-volts_between = Lists disagree: { $low } to { $high }.
doubt-amperes_between = Lists disagree: { $low } to { $high }.
doubt-odd_current = Draws another current than the types it is often taken for.
doubt-two_names = Was sold under two numbers; some lists give another voltage.
doubt-tap = The tap for the lamp is doubtful.
doubt-span = Takes up anything from { $low } to { $high }.
doubt-suffix = The list has it without the last letter; a few improved versions draw another current.
doubt-by_rule = By rule, not from a list.
