# Tests on the bench: stored charge, insulation, the live touch test.

## Stored charge

charge-energy = Energy
charge-charge = Charge
charge-first = First current
charge-electrolytic-note = As marked, to half as much again: an electrolytic capacitor may hold that much more than it says.
charge-marked-note = As marked.
charge-charge-note = What goes through whoever touches both ends.
charge-first-note = At the first touch, hand to hand, through { $body } (estimate, 5 % of people). It falls as the capacitor empties.
charge-level-low = { $volts }: no shock hazard in ordinary use below this
charge-level-plug = { $volts }: allowed at the pins of a plug one second after it is pulled
charge-level-empty = { $volts }: a twentieth of what it held
charge-never = Nothing bleeds it. It may stay for days.
charge-below = below it from the start
charge-limit-fibrillation = 100 mC in one pulse: the heart may stop
charge-limit-shock = 100 V and 10 J: a shock hazard by itself
charge-limit-act = 100 V and 1 J: to be worked on only as a live part
charge-limit-reflex = 400 V and 0.25 J: a jerk that throws you
charge-limit-touchable = 60 V and 45 µC: too much for a part that anyone may touch
charge-not-ruled-out = A limit that is not reached is no promise. A smaller charge through the chest, or a jerk into something live or hot, is not ruled out.
charge-unplug = Unplug it and keep the plug in your sight.
charge-timer = The time is for a sound bleed resistor and this capacitor. An open resistor, a swollen capacitor or a charge that creeps back make it longer: never trust the timer alone.
charge-no-bleed = Nothing empties it by itself. Do not wait for it.
charge-measure = Measure across it, on a direct-voltage range that shows more than it can hold.
charge-discharge = Discharge it through a resistor of a few kilohms that can take it, with insulated clips and one hand. Then measure again, and once more a minute later.

## Insulation

insulation-qualified = For a qualified person. Local codes come first.
insulation-unplug = Unplug it. The tester puts a high voltage on every part that you join to it: touch nothing while it runs.
insulation-refused-conflict = Your findings contradict each other. Mend that first: until then nobody knows where the test voltage would go.
insulation-refused-no_line = There is no line side in it. There is nothing to test.
insulation-refused-ways = Do not use it on this unit: still possible are { $ways }. There the metal belongs to the line side or hangs on it by a resistor. The test would read that and nothing else, and its voltage would go through tubes and capacitors that were not made for it.
insulation-lift-capacitor = An ordinary capacitor from the line to the metal is still possible. An old paper one can break down at the test voltage, and until then it hides what the insulation does. Lift one of its leads first, or do not test.
insulation-step-join = Join both supply pins of the plug, the power switch ON. A third pin stays free. One lead of the tester goes to the joined pins, the other to the bare metal.
insulation-step-test = Test with { $volts } direct voltage for a minute, or with less where local practice asks for it, and enter what it settles at.
insulation-step-discharge = Wait until the tester has discharged the unit, measure that nothing is left, then take off the leads.
insulation-means-rejected = Below 1 MΩ. Do not power it: something lets the line through.
insulation-means-earthed_only = Above 1 MΩ, enough where an earth wire is proven on the metal. Below the 2 MΩ that a unit without an earth wire has to reach.
insulation-means-enough = It reaches 2 MΩ, the least of a unit without an earth wire.
insulation-leak = As a leak of its own that is { $current } at { $volts }.
insulation-not-class = It says how good the insulation is today. It does not change the class: a capacitor, a winding or a stray wire can fail tomorrow.

## The live touch test

touch-qualified = A live test, for a qualified person only. Local codes come first. Everybody else stops here.
touch-energised = The unit is energised for this. From the moment the plug goes in, touch nothing but the insulated parts of the probes.

touch-refused-no_line = There is no line side in it. There is nothing to measure.
touch-refused-conflict = Your findings contradict each other. Mend that first: a unit that nobody knows is not plugged in.
touch-refused-live = It is live as found. This test would only put the line on the metal. Do not plug it in.
touch-refused-may_be_live = It may be live as found. Rule that out with the plug in your hand first: look further, or take meter readings.
touch-refused-no_plug = There is no plug on it.
touch-refused-no_metal = No bare metal was found that the test could be held to.
touch-refused-no_meter = It needs a meter, and somebody who can use one.

touch-protection-gfci = GFCI
touch-protection-gfci-says = Press its test button now. It must trip. It limits how long a current flows, not how much.
touch-protection-rcd = RCD, 30 mA or less
touch-protection-rcd-says = Press its test button now. It must trip. It limits how long a current flows, not how much.
touch-protection-isolating = Tested isolating transformer
touch-protection-isolating-says = It takes away the path to earth, and with it what this test measures.
touch-isolated = Behind an isolating transformer this test proves nothing. With { $farads } from its winding to earth, metal joined straight to the line would read { $volts }, below the limit of { $limit }. Take it behind a GFCI or RCD.
touch-earthed = The earth wire carries the leak away. A low reading shows that bond, not how much leaks.

touch-tool-earth = A proven earth: between the hot contact of the outlet and this earth the meter shows the line voltage, and between earth and the neutral contact next to nothing.
touch-tool-network = A resistor of 1500 Ω, 10 W or more, and a capacitor of 0.15 µF beside it, rated for the line, with insulated clips. If the metal is joined straight to the line, the resistor takes { $watts }: leave it on for a second, no longer.
touch-tool-meter = A meter on alternating volts, its leads and their rating fit for the line.
touch-ghost = Alone, an ordinary meter (10 MΩ) shows up to { $most } here on metal that keeps the limit: stray capacitance is enough for that, and hardly any current stands behind it. That is a ghost, and the network takes it away. What shows more is not one. Above { $stop } the meter alone cannot tell, so there it ends.
touch-ghost-stops = Alone, an ordinary meter (10 MΩ) shows up to { $most } here on metal that keeps the limit: stray capacitance is enough for that, and hardly any current stands behind it. That is a ghost, and the network takes it away. But the meter alone cannot tell it from the line, so above { $stop } it ends even on sound metal. On a low-impedance range a ghost shrinks to next to nothing, the line does not.
touch-stopped = Stop. Unplug it. Above { $stop } on the meter alone this can be the line itself. Do not put the network on. Read it unplugged with the ohmmeter. On a low-impedance range a ghost shrinks to next to nothing; whoever has one may read again with it.
touch-stopped-tripped = Stop. The protection tripped. Unplug the unit before you reset it, and do not try again.
touch-tripped = it tripped
touch-tripped-says = The protection tripped: more went to earth than a touch may get. Do not use it until the reason is found.
touch-look-first = Look at { $what } first, unplugged: it can forbid power.

touch-position-first_on = One way round, switch ON
touch-position-first_off = One way round, switch OFF
touch-position-second_on = Turned round, switch ON
touch-position-second_off = Turned round, switch OFF
touch-position-only_on = Switch ON
touch-position-only_off = Switch OFF

touch-check-unplugged = Unplugged, set the switch and put the meter between the bare metal and the proven earth, by clips. Nothing else is joined to the unit.
touch-check-hands = Plug it in behind the protection. Hands off, nobody near.
touch-check-read = Enter what the meter alone shows. Then unplug.
touch-network-unplug = Unplugged, clip the network across the meter: between the same metal and earth.
touch-network-read = Plug it in the same way round, read, unplug. Enter the reading. Every piece of bare metal gets its turn: the highest counts.
touch-network-short = If the protection trips or the resistor gets hot: unplug at once.

touch-above = { $current }, above the limit of { $limit }.
touch-below = { $current }, not above the limit of { $limit }.
touch-implied = As much as { $farads } from the hot wire alone would let through.
touch-more = More than sound parts explain here. Something leaks that was not found.
touch-less = Less than was to be expected. Is that earth an earth, is the network whole, did the probe reach bare metal?
touch-together-above = { $most } is above the limit of { $limit }. Unplug it and do not use it. The class still counts for what one more fault would do.
touch-together-below = Nothing read so far is above the limit of { $limit }; the most was { $most }. That is how it is today, plugged as it was. It does not change the class: that is what one more fault would do.
touch-not-read = Not read: { $positions }.
touch-plain = { $text }

finding-live_test-qualified = who takes the touch test
finding-live_test-protection = the protection of the touch test
finding-live_test-check_first_on = the meter alone: one way round, switch on
finding-live_test-check_first_off = the meter alone: one way round, switch off
finding-live_test-check_second_on = the meter alone: turned round, switch on
finding-live_test-check_second_off = the meter alone: turned round, switch off
finding-live_test-first_on = the touch test: one way round, switch on
finding-live_test-first_off = the touch test: one way round, switch off
finding-live_test-second_on = the touch test: turned round, switch on
finding-live_test-second_off = the touch test: turned round, switch off
answer-live_test-qualified = a qualified person
