# Tests on the bench: stored charge, insulation, the live touch test.

## Stored charge

charge-energy = Energy
charge-charge = Charge
charge-first = First current
charge-electrolytic-note = As marked, to half as much again: an old electrolytic capacitor may hold that much more than it says.
charge-marked-note = As marked, to a fifth more.
charge-charge-note = What goes through whoever touches both ends.
charge-first-note = At the first touch, hand to hand, through { $body } (estimate, 5 % of people). It falls as the capacitor empties.
charge-level-low = { $volts }: a limit for direct voltage that may be touched, no promise
charge-level-plug = { $volts }: allowed at the pins of a plug one second after it is pulled
charge-level-empty = { $volts }: a twentieth of what it held
charge-never = Nothing bleeds it. It may stay for days.
charge-below = at or below it from the start
charge-limit-fibrillation = 60 V and 100 mC in one pulse: the heart may stop
charge-limit-shock = 100 V and 10 J: a shock hazard by itself
charge-limit-burn = 100 J: a short through metal burns
charge-limit-act = 100 V and 1 J: to be worked on only as a live part
charge-limit-reflex = 400 V and 0.25 J: a jerk that throws you
charge-limit-touchable = 60 V and 45 µC: too much for a part that anyone may touch
charge-not-ruled-out = A limit that is not reached is no promise. A smaller charge through the chest, or a jerk into something live or hot, is not ruled out.
charge-unplug = Unplug it and keep the plug in your sight.
charge-timer = The time is for a sound bleed resistor within a fifth of its marking, and for this capacitor. An open resistor, a swollen capacitor or a charge that creeps back make it longer: never trust the timer alone.
charge-no-bleed = Nothing empties it by itself. Do not wait for it.
charge-measure = Measure across it, on a direct-voltage range that shows more than it can hold.
charge-discharge = Discharge it through a resistor of a few kilohms that can take it, with insulated clips and one hand. Then measure again, and once more a minute later.

## Insulation

insulation-qualified = For a qualified person. Local codes come first.
insulation-unplug = Unplug it. The tester puts a high voltage on every part that you join to it: touch nothing while it runs.
insulation-refused-conflict = Your findings contradict each other. Mend that first: until then nobody knows where the test voltage would go.
insulation-refused-no_line = There is no line side in it. There is nothing to test.
insulation-refused-ways = Do not use it here. Still possible: { $ways }. There the metal belongs to the line side, or little holds it off. The test would read that and nothing else, and its voltage would go through tubes and capacitors that were not made for it.
insulation-refused-no_metal = No bare metal was found that it could be held to.
insulation-lift-capacitor = An ordinary capacitor from the line to the metal is still possible. An old paper one can break down at the test voltage, and until then it hides what the insulation does. Lift one of its leads first, or do not test.
insulation-step-join = Join both supply pins of the plug, the power switch ON. A third pin stays free. One lead of the tester goes to the joined pins, the other to the bare metal.
insulation-step-test = Test with { $volts } direct voltage for a minute, or with less where local practice asks for it, and enter what it settles at.
insulation-step-discharge = Wait until the tester has discharged the unit, measure that nothing is left, then take off the leads.
insulation-means-rejected = Below 1 MΩ. Do not power it: something lets the line through.
insulation-means-earthed_only = Above 1 MΩ, enough where an earth wire is proven on the metal. Below the 2 MΩ that a unit without an earth wire has to reach.
insulation-means-enough = It reaches 2 MΩ, the least of a unit without an earth wire.
insulation-over-range = Above the range of the tester. That is enough only where its range goes beyond 2 MΩ and it tests with its full voltage: an ohmmeter does not.
insulation-says-nothing = This value says nothing of this unit: see below.
insulation-capacitor-apart = Taken with the capacitor lifted, it says nothing of the capacitor. Judge that by itself, and replace it.
insulation-leak = As a leak of its own that is { $current } at { $volts }.
insulation-not-class = It says how good the insulation is today. It does not change the class: a capacitor, a winding or a stray wire can fail tomorrow.

## The live touch test

touch-qualified = A live test, for a qualified person only. Local codes come first. Everybody else stops here.
touch-energised = While the plug is in, touch nothing. Everything is clipped on before.

touch-refused-no_line = There is no line side in it. There is nothing to measure.
touch-refused-conflict = Your findings contradict each other. Mend that first: a unit that nobody knows is not plugged in.
touch-refused-live = It is live as found. This test would only put the line on the metal. Do not plug it in.
touch-refused-may_be_live = It may be live as found. Rule that out with the plug in your hand first: look further, or take meter readings.
touch-refused-isolated = Behind an isolating transformer nothing comes back to earth, so the test reads next to nothing whatever the unit is. It is made straight at the outlet, behind { -a-guard }.
touch-refused-no_plug = There is no plug on it.
touch-refused-outside_supply = An outside supply feeds it. Inspect the supply as a unit of its own.
touch-refused-no_metal = No bare metal was found that the test could be held to.
touch-refused-no_meter = It needs a meter, and somebody who can use one.

touch-protection-gfci = GFCI
touch-protection-gfci-says = Press its test button now: it must trip. It limits how long a current flows, not how much.
touch-protection-rcd = RCD, 30 mA or less
touch-protection-rcd-says = Press its test button now: it must trip. It limits how long a current flows, not how much.
touch-protection-isolating = Tested isolating transformer
touch-protection-isolating-says = It takes away the path to earth, and with it what this test measures.
touch-isolated = Behind an isolating transformer this test proves nothing. With { $farads } from its winding to earth, metal joined straight to the line would read { $volts }, below the limit of { $limit }. Take it behind { -a-guard }.
touch-earthed = The earth wire carries the leak away. A low reading shows that bond, not how much leaks.
touch-may_be_earthed = An earth wire may be on the metal and carry the leak away. Then a low reading shows that bond, not how much leaks.

touch-tool-earth = A proven earth, apart from the unit.
touch-tool-network = A resistor of 1500 Ω, 10 W or more, and a capacitor of 0.15 µF beside it, rated for the line, with insulated clips. If the metal is joined straight to the line, the resistor takes { $watts }: leave it on for a second, no longer.
touch-tool-meter = A meter on alternating volts with 10 MΩ or more, and with a range of low impedance or a two-pole tester beside it; leads and ratings fit for the line.
touch-ghost = Alone, an ordinary meter (10 MΩ) shows up to { $most } here on metal that keeps the limit: stray capacitance is enough for that, and hardly any current stands behind it. That is a ghost, and the network takes it away. Above { $stop } the meter alone cannot tell, so there the test stops until low impedance has told.
touch-ghost-none = No ghost to speak of is to be expected here: what a meter alone shows on this metal has current behind it, or leaks away by an earth wire. Above { $stop } the test stops.
touch-ghost-stops = Alone, an ordinary meter (10 MΩ) shows up to { $most } here on metal that keeps the limit: stray capacitance is enough for that, and hardly any current stands behind it. That is a ghost, and the network takes it away. But the meter alone cannot tell it from the line, so above { $stop } it stops even on sound metal. On a low-impedance range a ghost shrinks to next to nothing, the line does not.
touch-stopped = Stop. Unplug it. Above { $stop } on the meter alone this can be the line itself: the network stays off. Read it unplugged with the ohmmeter. A range of low impedance may tell a ghost from the line: a ghost all but goes on it.
touch-stopped-low = Stop. It stays above { $stop } on low impedance too. That is no ghost: treat it as the line.
touch-stopped-tripped = Stop. The protection tripped. Unplug the unit before you reset it, and do not try again.
touch-stopped-above = Stop. Unplug it. This is above the limit: nothing more needs to be read.
touch-tripped = it tripped
touch-tripped-says = The protection tripped: more went to earth than a touch may get. Do not use it until the reason is found.
touch-look-first = Look at { $what } first, unplugged: it can forbid power.

touch-position-first_on = Mark at mark, switch ON
touch-position-first_off = Mark at mark, switch OFF
touch-position-second_on = Turned round, switch ON
touch-position-second_off = Turned round, switch OFF
touch-position-only_on = Switch ON
touch-position-only_off = Switch OFF


touch-more = More than sound parts explain here. Something leaks that was not found.
touch-together-above = { $most } is above the limit of { $limit }. Unplug it and do not use it. The class still counts for what one more fault would do.
touch-together-below = Nothing read so far is above the limit of { $limit }; the most was { $most }. That is how it is today, plugged as it was. It does not change the class: that is what one more fault would do.

touch-earth-direct = On the range of low impedance, or with a two-pole tester, and at a wall outlet without { -guard }, which it would trip: first the earth lead by its clip, then a shrouded probe in the hot contact, one hand. From that earth to the neutral contact it has to show next to nothing. Nothing of the unit takes part.
touch-earth-isolated = Not behind an isolating transformer: there the test reads nothing.
touch-earth-step_down_auto = On the range of low impedance, or with a two-pole tester, and at the output of the autotransformer: first the earth lead by its clip, then a shrouded probe in either contact, one hand. One of them can show all that goes into the autotransformer. Nothing of the unit takes part.
touch-earth-both_hot = On the range of low impedance, or with a two-pole tester, and at a wall outlet without { -guard }, which it would trip: first the earth lead by its clip, then a shrouded probe in either contact, one hand. Both have to show half the supply. Nothing of the unit takes part.
touch-earth-enter = Enter what it shows from the hot contact to the earth. A meter of high impedance proves nothing here: it shows the same on any large piece of metal. Do it again at the end.
touch-earth-unproven = This is not about { $volts }. Either that is no earth, or the meter is not on alternating volts. Until it is proven, no low reading counts.

touch-check-mark = Once: mark one side of the plug and the side of the outlet that it goes to. Mark at mark, and turned round, are then the same each time.
touch-check-unplugged = Unplugged, set plug and switch as above, and clip the meter between the bare metal and the proven earth. Nothing else is joined to the unit.
touch-check-terminals = An aerial or earth terminal counts as bare metal here and gets its turn.
touch-check-selector = Its ground switch is a position of its own: take each reading with it both ways, and enter the higher.
touch-check-hands = Plug it in behind the protection. Hands off, nobody near.
touch-check-read = Read it, unplug, then enter it.
touch-low-unplugged = Unplugged, put the meter on its range of low impedance. Same metal, same earth, same way round. Plug it in, hands off.
touch-check-both = { $high }, on low impedance { $low }
touch-network-unplug = Unplugged, clip the network across the meter: same metal, same earth, same way round.
touch-network-read = Plug it in for a second, read, unplug, then enter it. On the line the resistor would take { $watts }. If the protection trips or the resistor gets hot, unplug at once.
touch-network-turns = Another piece of bare metal begins again with the meter alone. The highest reading of a position is kept.

touch-above = { $current } and { $watts } in the resistor: above the limit of { $limit }, { $limit_current }.
touch-below = { $current } and { $watts } in the resistor. The limit is { $limit }, { $limit_current }.
touch-apart = The network shows more than the meter alone did. That cannot be: another piece of metal, another position, or a loose clip. Take the reading back under Found and begin this position again.
touch-unchecked = Read without the meter alone before it. It counts only if it is above the limit.
touch-less = Less than was to be expected. Is that earth an earth, is the network whole, do the clips bite on bare metal? Prove earth and meter again.
touch-implied = The highest reading is as much as { $farads } from the hot wire alone would let through.
touch-implied-known = The highest reading is as much as { $farads } from the hot wire alone would let through. The line capacitor in it is given as { $known }; in the other position of plug or switch it shows less.
touch-alone-says = The meter alone shows more than { $stop }. Nothing can be concluded before that is explained. Do not use it.
touch-told-says = { $most } was told, without earth, protection or check beside it. It counts only if it is above the limit of { $limit }.
touch-together-doubt = Some readings cannot be right, or the earth is not proven. Nothing can be concluded until that is mended.
touch-not-read = Not read: { $position }

finding-live_test-qualified = who takes the touch test
finding-live_test-protection = the protection of the touch test
finding-live_test-earth_volts = the proof of the earth
finding-live_test-check_first_on = the meter alone: mark at mark, switch on
finding-live_test-check_first_off = the meter alone: mark at mark, switch off
finding-live_test-check_second_on = the meter alone: turned round, switch on
finding-live_test-check_second_off = the meter alone: turned round, switch off
finding-live_test-low_first_on = low impedance: mark at mark, switch on
finding-live_test-low_first_off = low impedance: mark at mark, switch off
finding-live_test-low_second_on = low impedance: turned round, switch on
finding-live_test-low_second_off = low impedance: turned round, switch off
finding-live_test-tripped_first_on = the protection: mark at mark, switch on
finding-live_test-first_on = the touch test: mark at mark, switch on
finding-live_test-tripped_first_off = the protection: mark at mark, switch off
finding-live_test-first_off = the touch test: mark at mark, switch off
finding-live_test-tripped_second_on = the protection: turned round, switch on
finding-live_test-second_on = the touch test: turned round, switch on
finding-live_test-tripped_second_off = the protection: turned round, switch off
finding-live_test-second_off = the touch test: turned round, switch off
answer-live_test-qualified = a qualified person
