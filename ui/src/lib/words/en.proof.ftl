# The proof of a repair. Lines, limits, cautions and marks are the core's.

proving-title = Prove the repair
proving-see = Prove the repair
proving-choose = Choose what to repair
# $stack is the names of the steps that were chosen.
proving-of = What is to be proven: { $stack }.
proving-not-here = This repair needs no such line.
# $line is the name of a line.
proving-next = Next: { $line }
proving-to-plan = Back to all lines

## The groups of lines

proving-group-unplugged = With the plug out
proving-group-outlet = At the outlet
proving-group-live = Plugged in, by a qualified person

## One line

proving-limit = Limit
proving-who = Who
proving-source = From
proving-ohms = Ohms
proving-megohms = Megohms
proving-volts = Volts
proving-milliamps = Milliamps
proving-figure = Figure
# $unit is Ω, MΩ, V or mA.
proving-hint = As the meter shows it, in { $unit }
proving-unreadable = Takes a number in { $unit }
proving-read = { $read } { $unit }
proving-marks = Put a mark on the plug and one beside the outlet. Mark at mark is the one way round.
proving-not-read = not read yet
proving-holds = It holds
proving-holds-not = It does not hold
proving-i-may-wire = I may work on the building’s wiring
# $line is the line that failed.
proving-held = “{ $line }” has failed. Nothing is plugged in before that is mended and taken again.

## What to do about a line that failed

proving-failed = Do not plug it in. Mend it, then take this line again.
proving-failed-earth_bond = The earth wire does not carry as it has to. Look for paint under the lug, a loose screw, or broken strands at either end of the cord.
proving-failed-cord_pull = The cord moves. Fit a strain relief that grips the sheath, and leave the earth wire the longest inside.
proving-failed-wide_blade_near_leg = The wide blade does not lead to the common. The two wires are swapped, or a joint is bad: correct it in the plug or at the switch.
proving-failed-hot_blade_open_off = Hot passes with the switch off. The switch is in the other leg, is worn, or has a leaking capacitor across it.
proving-failed-lost_barrier = Something comes off by hand. Glue, screw or sleeve it, so that it takes a tool.
proving-failed-insulation = The insulation is too low. Find out whether the transformer, the cord or dirt across a terminal lets it through. A transformer that leaks is replaced.
proving-failed-outlet_proven = The outlet is not as it has to be. Use another one, and have this one put right by whoever may do that.
proving-failed-chassis_volts_loaded = The metal is at more than the limit. Pull the plug. Something still joins it to the line: go back to what was found.
proving-failed-leakage_first = More leaks than the limit. Pull the plug. A line capacitor, the insulation or a noise filter lets it through.
proving-failed-leakage_second = More leaks than the limit with the plug turned round. Pull the plug. What is on the one leg only shows this way.

## Ready, and the inspection before

proving-ready = Mark the unit ready
proving-is-ready = Marked ready
proving-is-ready-means = Every line of this plan was passed. What the plan does not ask for was not checked. What was found here is from before the repair: inspect the unit again, and both stand side by side.
proving-ready-back = Take the mark back
proving-compared = Beside the first inspection
proving-first = At first
proving-now = Now
proving-see-first = See the first inspection
field-read = Reading
field-entry = What was entered
field-positions = Positions
