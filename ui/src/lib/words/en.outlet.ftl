# Where a unit will be plugged in. The question, the outlets and how they are told are the core's.

outlet-title = Where will it be plugged in?
outlet-see = Where will it be plugged in?
outlet-tell = How to tell
# $found is the most with no fault, $worst the most of all.
outlet-current = { $found } as found
outlet-currents = { $found } as found, { $worst } at worst
# $class is the class in words.
outlet-here = Plugged in there: { $class }.
outlet-isolated-doubt = By its case alone nobody can tell. A variable or a step-down transformer looks the same, and nearly all of those have one winding that isolates nothing. Until it is measured, count with a plain outlet.
outlet-test-behind = What stands here is worked out from what was found of the unit. It is no test of the outlet and none of the transformer.
outlet-input-unreadable = Takes a number
field-input_volts = Volts that go into it
