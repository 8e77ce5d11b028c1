# Ohmmeter readings: how each is taken, what it says, and what may have fooled the meter.

readings-unplugged = Unplug it, and keep the plug in your sight. Never put an ohmmeter on a unit that is plugged in.
readings-discharge = Capacitors hold a charge after it is unplugged. With the cover off, discharge them through a resistor and measure that nothing is left before a probe goes in.

readings-first-plug = Say first which plug it has: the pins are named by it.
readings-first-kind = Say first what kind of unit it is. A motor across the line lets pin to pin look sound while the set itself is cut off.
readings-first-earth_lift = Say first whether there is an earth-lift switch. With one, the earth pin can read either way.

## Places

probe-chassis = the chassis itself
probe-part = the bare metal that you found
probe-earth_pin = the earth pin

pin-a-wide = the narrow blade (pin A)
pin-b-wide = the wide blade (pin B)
pin-a-neutral = the pin that is not neutral (pin A)
pin-b-neutral = the neutral pin (pin B)
pin-a-taped = the pin without tape (pin A)
pin-b-taped = the pin with tape (pin B)
pin-a-ends = the wire without tape (pin A)
pin-b-ends = the wire with tape (pin B)

## Titles

reading-title-ohms_a_chassis_on = Pin A to the chassis, switch on
reading-title-ohms_a_chassis_off = Pin A to the chassis, switch off
reading-title-ohms_b_chassis_on = Pin B to the chassis, switch on
reading-title-ohms_b_chassis_off = Pin B to the chassis, switch off
reading-title-ohms_earth_chassis = Earth pin to the chassis
reading-title-ohms_a_part_on = Pin A to the bare metal, switch on
reading-title-ohms_a_part_off = Pin A to the bare metal, switch off
reading-title-ohms_b_part_on = Pin B to the bare metal, switch on
reading-title-ohms_b_part_off = Pin B to the bare metal, switch off
reading-title-ohms_earth_part = Earth pin to the bare metal
reading-title-ohms_a_b_on = Pin to pin, switch on
reading-title-ohms_a_b_off = Pin to pin, switch off

## How

reading-how-switch-on = Unplugged, put the power switch ON. The set must be able to show its way through.
reading-how-switch-off = Unplugged, put the power switch OFF.
reading-how-pins = One probe on each supply pin. Either way round.
reading-how-chassis = One probe on the pin, the other on bare metal of the chassis itself: scrape through paint or rust.
reading-how-part-lowest = One probe on the pin. Touch the other to every bare piece in turn, jacks, screws and terminals too, and enter the lowest figure you see.
reading-how-part-highest = One probe on the earth pin. Touch the other to every bare piece in turn and enter the highest figure you see.
reading-how-steady = Use the automatic range or the highest one. Wait until the figure stands still. Keep your fingers off the metal of the probes.

## What was read

reading-over-range = OL
reading-range = { $low } to { $high }

way-line_tied = Line tied
way-line_rectified = Line rectified
way-line_floated = Line floated
way-line_insulated = Line insulated
way-heater_transformer = Heater transformer
way-autotransformer = Autotransformer
way-isolating = Isolating transformer
way-no_line = No line inside
way-on-pin-a = { $way }, common on pin A
way-on-pin-b = { $way }, common on pin B

reading-means-nothing = By itself this reading rules nothing out.
reading-means-fewer = This reading leaves { $left } of { $all } ways to build the line side. Each kind is still possible in some form.
reading-means-gone = This reading rules out: { $ways }. It leaves { $left } of { $all } ways to build the line side.
reading-means-conflict = This reading is one of findings that contradict each other. Until that is mended, the worst of them counts.

readings-path-proven = Pin to pin changes with this switch: cord, switch and load are joined through. OL to the chassis now means that it is not tied to a supply wire.
readings-path-not_read = Pin to pin is not read yet with the switch on and off. Until then, OL to the metal may only mean a broken wire.
readings-path-open = Pin to pin reads open with the switch on: a tube, a fuse, the cord or a switch is open somewhere. OL to the metal says nothing until that is found.
readings-path-unchanged = Pin to pin does not change with this switch. Another switch may stand open, so OL to the metal says nothing.
readings-path-motor = There may be a motor across the line, or something plugged into its own outlet. Pin to pin then proves nothing about the set, and OL to the metal says nothing.
readings-conflict = These readings and your other findings cannot all be true. Look again at those named in the verdict.

## Traps

trap-warm_string = More than these tubes read cold. Was it on in the last ten minutes? Warm heaters read two to four times too high: wait, and read again.
trap-charging = Does the figure climb? The meter is charging a capacitor: wait until it stands still. If it starts below zero or jumps about, a capacitor still holds a charge: discharge it, measure that it is gone, then read again.
trap-diode = Swap the two probes. If it now reads otherwise, a rectifier is in the path and the lower figure counts.
trap-thin_filaments = These tubes have filaments of 50 mA or less. The meter’s current warms them, so the figure drifts up; a low range of an old meter can burn them out. Use a high range and be quick.
trap-fingers = Fingers on both probes read about this much. Hold them by the insulation and read again.
trap-leads = Touch the probes together: what you read then is the leads. Take it off this figure.
trap-low_range = OL on a low range is not open. Go to the automatic range or the highest one before you enter it.
trap-broken_path = One dead tube, an open fuse, a cut cord or a changeover switch on “battery” opens the whole path. This does not show that there is no line inside.

## Meter

meter-line = ±({ $percent } % + { $digits } digits), OL above { $most }
reading-asked-why = A figure can rule out what nobody can see from outside.
reading-asked-how = Unplugged. Touch the two probes together first. Then hold one to each place and wait for the figure to settle.
reading-asked-caution = Unplug it first. Capacitors may still be charged: discharge and measure them before you touch anything inside.
