# What repairs change: modifications, why one is not offered, where a unit stands before and after, the stack.
# Limits: 0.5 mA (UL 101) and 5 mA (let-go surveys), as in classes.ftl. Trip times: UL 943, IEC 61008-1.

## Modifications: what each is called, what it changes, and what it does not do

remedy-polarised_plug = Polarised plug
remedy-polarised_plug-does = A plug that goes in one way only, its hot blade to the far leg, so that the common stands on the neutral.
remedy-polarised_plug-not = It helps only in an outlet that is polarised and wired right. With the switch in the near leg the chassis is live again when it is switched off.
remedy-switch_to_hot_leg = Switch moved to the hot leg
remedy-switch_to_hot_leg-does = The power switch opens the far leg instead of the near one.
remedy-switch_to_hot_leg-not = It gains nothing while the plug goes in both ways round.
remedy-line_capacitor_removed = Line capacitor taken out
remedy-line_capacitor_removed-does = No part joins a supply leg to the chassis any more.
remedy-line_capacitor_removed-not = It gives no earth and no isolation: a breakdown of insulation or a loose wire still makes the metal live.
remedy-line_capacitor_class_y = Line capacitor replaced by class Y
remedy-line_capacitor_class_y-does = A capacitor that is made for line to metal, of a value that leaks less than the limit, and not counted to short by itself.
remedy-line_capacitor_class_y-not = It still leaks, and it gives no earth.
remedy-three_wire_cord = Three-wire cord, earth on the chassis
remedy-three_wire_cord-does = The chassis is bonded to the earth of the supply: a breakdown to it should blow the fuse or trip the breaker instead of waiting for a hand.
remedy-three_wire_cord-not = It helps only as long as the earth wire is whole and the outlet has a proven earth. Never on a chassis that is joined to the line.
remedy-fuse_in_hot_leg = Fuse in the hot leg
remedy-fuse_in_hot_leg-does = An in-line fuse ahead of the switch, against fire.
remedy-fuse_in_hot_leg-not = It changes no touch current: what flows through a person never blows it. On a plug that goes in both ways round it can open the neutral and leave the set hot.
remedy-isolating_transformer_inside = Isolating transformer built in
remedy-isolating_transformer_inside-does = Separate windings between the supply and the circuit. The chassis is then the set’s own common.
remedy-isolating_transformer_inside-not = It does not earth the chassis, and touching two points of the circuit still gives a shock. Capacitors and networks from the old line side to the chassis have to come out with it: left in, it is not what is shown here. It needs room, ventilation and a fuse of its own.
remedy-isolating_transformer_in_front = Isolating transformer in front
remedy-isolating_transformer_in_front-does = Nothing comes back to earth while this unit alone is on it.
remedy-isolating_transformer_in_front-not = Touching two points of the circuit still gives a shock. It is no part of the unit: plugged in anywhere else, the unit is what it was. A second unit on it, or earthed test gear, takes the isolation away, and { -a-guard } ahead of it sees nothing. A variable or step-down transformer is mostly an autotransformer and isolates nothing.
remedy-reach_closed = Metal put out of reach
remedy-reach_closed-does = Insulated screws and knobs, sleeves over shafts, a whole back; an aerial or earth terminal is disconnected and covered.
remedy-reach_closed-not = What is behind stays as it was: one lost knob and it can be touched.
remedy-selector_disconnected = Ground switch disconnected
remedy-selector_disconnected-does = The ground switch stays as a dummy; its capacitor is out of the circuit.
remedy-selector_disconnected-not = It gives no earth and no isolation.
remedy-network_class_y = Chassis capacitor replaced by class Y
remedy-network_class_y-does = The capacitor between common and chassis is one that is not counted to short by itself, and leaks less.
remedy-network_class_y-not = The resistor beside it stays, and so does the common on the line. The set may pick up more hum.
remedy-gfci_outlet = Outlet with a GFCI
remedy-gfci_outlet-does = It ends a touch after a time; it does not make the current smaller and changes no class.
remedy-gfci_outlet-not = It does not see a touch from hot to neutral, and nothing at all behind an isolating transformer.
remedy-rcd_outlet = Outlet behind an RCD, type A
remedy-rcd_outlet-does = It ends a touch after a time; it does not make the current smaller and changes no class.
remedy-rcd_outlet-not = It does not see a touch from hot to neutral, and nothing at all behind an isolating transformer. Below 30 mA it need not trip.
remedy-rcd_ac_outlet = Outlet behind an RCD, type AC
remedy-rcd_ac_outlet-does = An RCD that is there already. It ends a touch after a time, where it is counted on.
remedy-rcd_ac_outlet-not = The direct current that a half-wave set draws can blind it (from memory). It does not see a touch from hot to neutral.

remedy-cost = about { $minutes } min, parts about { $price }

remedy-caution-reversible = Where outlets take a plug both ways round, or where it may be used in such a place, which way it goes in helps nothing: count with both.
remedy-caution-resistance_cord = The old cord drops volts for the heaters: a plain cord puts all of the line on them. Size a dropper first, and fit it where it can get rid of its heat.
remedy-caution-insulate = Insulate what is cut loose at both ends, and write on the chassis what was changed.

## Why one is not offered

refusal-no_line_side = Nothing in it is fed from the wall.
refusal-already = It is so already.
refusal-not_there = What it would change is not there.
refusal-held_in_use = The metal is held, or plugged in, while in use: it cannot be put out of reach.
refusal-line_on_earth = Not on this unit: as long as the chassis may be joined to the line, an earth wire puts the supply on the earth.
refusal-network_ordinary = Not yet: what holds the chassis off the line may be a capacitor that can short, or insulation that nobody has rated. Class Y comes first.
refusal-loses_earth = It would take away an earth that does its work.
refusal-goes_in_both_ways = At this voltage most outlets take a plug both ways round: it would gain nothing.
refusal-sees_nothing = Behind an isolating transformer such a device sees nothing.

## Where a unit stands. $state says plug, switch and faults.

standing-line = { $class }: at worst { $worst }, as it stands { $found }
standing-worst = { $state } At worst { $current } through whoever touches it.
standing-remaining = Still enough by itself: { $faults }.
standing-remaining-pairs = Still enough together: { $faults }.
standing-before = Now
standing-after = After
standing-over = Over all that it may be
standing-of-worst = The worst of these by itself

## Devices

device-gfci = A GFCI
device-rcd_a = An RCD of type A, 30 mA,
device-rcd_ac = An RCD of type AC, 30 mA,
device-trips = { $device } ends that within { $time }.
device-does-not-trip = { $device } is not counted on here: { $why }
blind-isolated = behind an isolating transformer nothing comes back past it.
blind-rectified = what a rectifier on the line passes is no plain alternating current.
blind-half_wave = the direct current of a half-wave set can blind type AC (from memory).
blind-neutral_open = its electronics are fed from the neutral that is broken.
blind-too_little = the current is less than what it must trip at.

## Stacks

stack-none = It takes two faults at least already.
stack-line = { $steps }: { $cost }
stack-worse = On the way, after “{ $step }”, it is worse than before: do not plug it in between.
stack-shortest = Shortest way to two faults
stack-in-unit = The shortest that stays with the unit
stack-no-way = No way of up to five steps reaches two faults with what is known. Find out more first.

remedies-now = Now: { $standing }
remedies-over = Judged over everything that it may still be ({ $count }), each figure the worst of it.
remedies-after = after: { $standing }
remedies-after-worst = the arrangement that is the worst now, by itself: { $standing }
remedies-not-offered = not offered: { $why }
remedies-worse = This makes something worse.
remedies-no-change = This changes no touch current.

## Cautions that stand at the head of every repair

repair-caution-codes = Local codes and licensed practice come first. Where they ask for more than this, or for somebody with a licence, do what they ask.
repair-caution-who = Work on the line side is for a qualified person. Work on the building’s outlets is for whoever may do that where you are.
repair-caution-unplug = Unplug it first, discharge the capacitors through a resistor, and measure that the charge is gone.
repair-caution-when-not = Do not repair it but pass it by, or leave it to a workshop, when the insulation of wires crumbles, the transformer smells burnt, wood or cabinet is charred, or the line side cannot be traced from end to end.
repair-caution-original = A changed cord, plug or switch can lower what a collector pays, and is undone by keeping the old parts in a bag with the unit. A unit that is only shown can stay as it is, with its cord taken off and a tag that says why.

## Where it will be plugged in

feed-question = Where will it be plugged in?
feed-why = The same unit stands differently behind a transformer, and not everything that is called one isolates.
feed-direct = Straight at an outlet
feed-direct-tell = One contact is the neutral, the other is hot. This is what to count with where nobody knows.
feed-both_hot = An outlet with two hot contacts
feed-both_hot-tell = Each contact reads about half of the voltage against earth, and keeps it under load. On a meter alone an isolated output can read the same.
feed-isolated = Behind an isolating transformer, alone on it
feed-isolated-tell = Between each output contact and the input pins, and between output and earth, an ohmmeter reads OL, above its range, plug out. One unit only: a second one, or earthed test gear, takes the isolation away, and the app counts that as a fault.
feed-step_down_auto = Behind a step-down transformer or a variable one
feed-step_down_auto-tell = Nearly all of these are autotransformers: an output contact reads a few ohms to an input pin, plug out. Nothing is isolated, and either contact can stand at the full input voltage.
feed-input = { $volts } go into it.
feed-input-assumed = Taken to get { $volts }, twice what comes out, because nobody said otherwise.

## Parts to buy, and their sizes. Each figure: data/sizing.csv, preferred.csv, cords.csv.

part-need-polarised_cord = Cord with a polarised plug
part-need-three_wire_cord = Three-wire cord with plug
part-need-strain_relief = Strain relief
part-need-earth_lug = Earth lug with lock washer, on a screw of its own
part-need-line_class_y = Class Y capacitor, line to chassis
part-need-network_class_y = Class Y capacitor, common to chassis
part-need-fuse = Fuse with holder
part-need-isolating_transformer = Isolating transformer
part-need-insulated = Insulated screws, knobs, sleeves; a whole back
part-need-sleeving = Sleeving and wire for what is moved or cut
part-need-outlet = Outlet or adaptor with its device

part-size-transformer = { $stock }
part-size-transformer-none = larger than any that is stocked: ask who winds them
part-size-fuse-ul = { $rating }, UL 248-14
part-size-fuse-iec = { $rating }, IEC 60127
part-size-fuse-none = larger than any in the table: look again at the rating plate
part-size-class_y = { $value }, class Y1; Y2 only where the chassis is on a proven earth wire
part-size-class_y-none = none of the series keeps to { $limit }: take it out instead
part-size-cord = { $size }, { $count } conductors, { $current }

part-note-needed = Needed: { $needed }; this is the next size that is stocked.
part-note-by-plate = Worked out as twice the watts of the rating plate (common practice: 1.5 to 2 times).
part-note-by-parts = Worked out from the heaters and the most that a small half-wave plate supply draws. Read the rating plate for a better figure.
part-note-one-unit = For one unit alone; its case earthed, its output not.
part-note-fuse-ul = It carries { $holds }, and opens within an hour from { $opens } on. A fuse of the same number to IEC 60127 holds half as much again.
part-note-fuse-iec = It holds { $holds } for an hour, and opens within half an hour from { $opens } on. A fuse of the same number to UL 248-14 opens sooner.
part-note-fuse-fast = The inrush stays below what it opens at: a fast one will do.
part-note-fuse-slow = The inrush of cold heaters or of the iron is more than it opens at: take a slow one.
part-note-fuse-other = Rounded up from 1.5 times the steady current (common practice), and for UL 248-14 never loaded above 75 %.
part-note-class_y = Under { $limit } at the highest supply voltage at most { $most }; the next value of the E6 series that keeps to it with its tolerance leaks { $leaks } at most.
part-note-class_y-voltage = Rated for the supply voltage, with the mark Y on it (IEC 60384-14).
part-note-colours-two = Line { $line }; neutral { $neutral }. No earth wire.
part-note-colours-three = Line { $line }; neutral { $neutral }; earth { $earth }.
part-note-colours-old = Colours of old cords differ, and red or black was earth in some: measure, do not trust them.

## Colours of the wires of new cords: data/wire_colours.csv.

wire-line-north_america = black, red, blue...
wire-neutral-north_america = white or grey
wire-earth-north_america = green, green-yellow or bare
wire-line-iec = brown (black, grey)
wire-neutral-iec = blue
wire-earth-iec = green-yellow
wire-line-japan = black
wire-neutral-japan = white
wire-earth-japan = green
