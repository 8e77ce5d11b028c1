# What the help of the command line says of its commands and options.

help-usage = Usage
help-commands = Commands
help-arguments = Arguments
help-options = Options
help-default = [default: { $value }]

help-coldchassis = Judge old line-powered electronics before they are plugged in.
help-assess = Judge a findings file: what to treat the unit as, and why.
help-exposure = Compute what a person would receive from one arrangement.
help-readings = Predict what an ohmmeter reads of one arrangement, unplugged and cold.
help-remedies = Show what each repair of a unit would change before it is done, and the shortest way to two faults.
help-heaters = Add up the heaters of a list of tubes: what it reads as, which is a hint and never proof.
help-simulate = Inspect synthetic units in several orders of asking: seconds and steps to the final verdict.
help-demo = Show a guided inspection of an invented radio; nothing is kept.
help-inspect = Inspect a unit: answer question by question at the terminal.
help-list = List the units of a record.
help-help = Print this help, or that of a command.

help-any-lang = The language: en or de. Without it the system's own.
help-any-json = Print JSON for a script.
help-any-help = Print this help.
help-any-version = Print the version.
help-assess-file = The findings, JSON; may be a pipe.
help-remedies-file = The findings, JSON; may be a pipe.
help-exposure-file = The arrangement, JSON; may be a pipe.
help-readings-file = The arrangement, JSON; may be a pipe.
help-exposure-skin = The skin of another person: dry, wet or saltwater.
help-exposure-percentile = The share of people with less impedance, in percent: 5, 50 or 95.
help-exposure-path = Another path than the worst to be expected, such as hand_to_hand.
help-heaters-types = The types, each as often as it is there.
help-heaters-volts = The line voltage, V.
help-heaters-hertz = Its frequency, Hz; for a capacitor in series.
help-simulate-units = Units for each access, kind and order.
help-simulate-seed = The seed: the same seed draws the same units.
help-inspect-record = Where to keep the record; without it nothing is kept.
help-inspect-supply = What the unit is to be plugged into, by preset.
help-inspect-access = How far you may go, besides looking from outside: cover_off, meter.
help-inspect-name = What people call the unit.
help-list-record = The record.
