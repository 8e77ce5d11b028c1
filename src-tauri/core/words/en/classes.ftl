# The verdict in words: classes, basis, reasons, severity, what may be done now, and the states they hold in.
# Variables come in already formatted, with their unit: $current, $leak.
# 0.5 mA (UL 101, as quoted in print) and 5 mA (let-go surveys, as reproduced in print) are the limits
# of the classes; limits.csv has them, and the words must change with them.

## Class labels

class-live = Live as found
class-leaky = Leaks as found, one fault from live
class-one_fault = One fault from live
class-two_faults = Two faults from live
class-no_line = No line voltage inside

## One or two words for a list

class-live-short = Live
class-leaky-short = Leaks
class-one_fault-short = One fault
class-two_faults-short = Two faults
class-no_line-short = No line

## The same inside a sentence, after "treat as", "could be" or "likely": these fill $class below

class-live-inline = live as found
class-leaky-inline = leaking as found, one fault from live
class-one_fault-inline = one fault from live
class-two_faults-inline = two faults from live
class-no_line-inline = free of line voltage

## Signal words (ANSI Z535.4, ISO 3864)

signal-danger = DANGER
signal-warning = WARNING
signal-notice = NOTICE

## Basis, as the tag prints it

tag-live-shown = Live: shown
tag-live-not_ruled_out = Treat as live: not ruled out
tag-leaky-shown = Leaks, one fault from live: shown
tag-leaky-not_ruled_out = Treat as leaking, one fault from live: not ruled out
tag-one_fault-shown = One fault from live: shown
tag-one_fault-not_ruled_out = Treat as one fault from live: not ruled out
tag-two_faults-shown = Two faults from live: shown
tag-two_faults-not_ruled_out = Treat as two faults from live: not ruled out
tag-no_line-shown = No line voltage inside: shown
tag-no_line-not_ruled_out = No line voltage inside: not shown

## Why. "Would" where the class is shown, "could" where it is not ruled out.
## $plug is a state-plug message, $switch a state-switch message, $fault a fault message.

reason-live-found = A person who touches the metal would receive { $current } through the body: plug { $plug }, switch { $switch }.
reason-live-not_ruled_out = Still possible: a person who touches the metal could receive { $current } through the body, with the plug { $plug } and the switch { $switch }.
reason-leaky = A person who touches the metal would receive { $leak } as it stands. One fault raises that to { $current }: { $fault }.
reason-leaky-not_ruled_out = Still possible: a person who touches the metal could receive { $leak } as it stands, and { $current } after one fault: { $fault }.
reason-one_fault = One fault would put { $current } through a person who touches the metal: { $fault }.
reason-one_fault-not_ruled_out = Still possible: one fault could put { $current } through a person who touches the metal: { $fault }.
reason-two_faults = No single fault counted here brings 5 mA to a person. Two together would bring { $current }: { $fault }.
reason-two_faults-not_ruled_out = Your findings leave no single fault that brings 5 mA to a person. Two together could still bring { $current }: { $fault }.
reason-three_faults = No single fault counted here, and no two together, bring 5 mA to a person. The worst two would bring { $current }: { $fault }.
reason-three_faults-not_ruled_out = Your findings leave no single fault, and no two together, that bring 5 mA to a person. The worst two could bring { $current }: { $fault }.
reason-line_on_earth = Inside, a supply conductor is joined to the earth wire. That counts as live whatever the touch current: plugged in, it trips the breaker or sends current down the earth wire, and with the earth lost the metal can be live.
reason-line_on_earth-not_ruled_out = Still possible: inside, a supply conductor is joined to the earth wire. That counts as live whatever the touch current: plugged in, it could trip the breaker or send current down the earth wire, and with the earth lost the metal can be live.
reason-no_line = There is no cord and no inlet: nothing inside is fed from the wall. A plate-voltage battery can still give a shock.
reason-no_line-outside = It is fed by an outside supply, so it has no line side of its own. What that supply lets through from the wall was not judged here: it is a unit of its own.
reason-no_line-found = No cord to the wall and no inlet were seen, but something that was found belongs to a unit with a cord: one of the findings is wrong.
reason-no_line-plate = No cord and no inlet were seen, but the rating plate names a supply from the wall: one of the two is wrong, or the unit was rebuilt.
reason-no_line-plate-unread = No cord and no inlet were seen, but nobody has read the rating plate: that one answer is all there is.
reason-no_line-cord = What was found inside fits only a unit that nothing feeds from the wall. But nobody has seen that it never had a cord or an inlet, so one wrong answer may have ruled out what it is.
reason-behind-barrier = Nothing joined to the circuit can be touched now. Only knobs, back and covers are in the way of { $current }.
reason-breaker-trips = In this state so much current goes to earth that the breaker trips.
reason-nothing-answered = Nothing is answered yet, so the worst is still possible.

## What a touch current does to a person

severity-below = Below 0.5 mA: a faint tingle at most for most people.
severity-startle = 0.5 to 5 mA: you feel it and jump. That can make you drop things or fall.
severity-let_go = 5 mA or more: it hurts, and your hands may not let go.
severity-fibrillation = It can stop the heart, and your hands may not let go.

## What may be done now

permission-live-shown = Do not plug it in. Have it repaired by a qualified person, or pass it by.
permission-live-not_ruled_out = Do not plug it in. Look or measure first.
permission-leaky = No hand contact while it is plugged in. On the bench only, behind { -a-guard-short } or a tested isolating transformer, by a qualified person.
permission-one_fault = Only while somebody stays with it, behind { -a-guard-short }, and with no earthed gear in the other hand. Unplug it after use.
permission-two_faults = Use a tested outlet. Check the cord, plug, earth wire and covers again every year.
permission-no_line = Nothing in it is fed from the wall. Check its battery, or its supply as a unit of its own.
permission-cautions-first = Do not power it until this is settled: { $cautions }.
permission-conflict = Do not plug it in until the findings that cannot all be true are mended.
permission-tingle = Do not power it until it is found why somebody felt a tingle: current has already gone through a person.
permission-leak = Do not power it until that is found: the lowest reading from a supply pin to the metal alone lets { $current } through.
permission-leak-wire = Do not power it until that is found: from a supply pin to the metal the meter reads as good as a wire.
permission-touch_test = Do not use it: the touch test is above its limit of 0.75 V. A qualified person must find out why.
permission-touch_tripped = Do not use it: the protection tripped when it was plugged in. A qualified person must find out why.
permission-touch_stopped = Do not use it: a meter showed more than 30 V on its metal, and nothing has cleared that.
permission-insulation_unearthed = Do not power it: the insulation is below the 2 MΩ that a unit without an earth wire has to reach. A qualified person must find out why.
permission-insulation = Do not power it: the insulation is below 1 MΩ. A qualified person must find out why.
permission-doubt-untraced = Do not plug it in until the bare metal is traced: if it is the circuit itself, this unit is worse than it looks.
permission-doubt-cord = Do not plug it in: one wrong answer may hide a line side. Look again at what was found inside.
permission-doubt-line = Do not plug it in, or into anything: something that was found belongs to a cord, so one of the findings is wrong.
permission-doubt-plate = Do not plug it in, or into anything: the rating plate names a supply from the wall, so a cord or an inlet may have been overlooked or taken out.
permission-doubt-plate-unread = Do not plug it in, or into anything, until somebody has read the rating plate: a cord or an inlet may have been overlooked.
permission-doubt-pin = Do not plug it in: nobody has seen the earth pin that the earth wire goes to. Whoever fits the plug decides whether the metal is earthed; it has to be looked at and measured then.
permission-doubt-aerial = Do not plug it in: the aerial or earth terminal gives more than the metal that was found, and the class is that of the metal.
permission-doubt-aerial-unseen = Do not plug it in until somebody has looked whether it has an aerial or earth terminal: one could give more than the metal that was found.
permission-doubt-lift = Do not plug it in until you know whether a switch on it lifts the earth: one position of such a switch could put the supply on the earth wire.
# $findings is a list of finding messages.
permission-look-first = Before anything else, look at { $findings }.
permission-limiters = Series lamps and variable autotransformers limit the current into a fault. They do not prevent a shock.
permission-codes = Local codes come first, wherever they ask for more.

## What is likely, still possible, and what it all rests on

likely-very = Very likely { $class } ({ $share }). Not proof.
likely-likely = Likely { $class } ({ $share }). Not proof.
could-be = Could be { $class }.
# $not_checked is a list of not-checked messages; not-checked-hidden is always among them, so it is never empty.
no-shock-path = No shock path found by these checks. Not checked: { $not_checked }.
# $findings and $finding are finding messages.
conflict-intro = These findings cannot all be true. Until you mend that, the verdict is the worst that any of them leaves possible.
conflict-look-again = Look again at { $findings }.
rests-on-one = All of this rests on one finding, { $finding }. Look at it twice. Without it, treat the unit as { $class }.
rests-on = This rests on { $finding }. Without it, treat the unit as { $class }.
not-checked-intro = Not checked:
not-checked-inside = the inside
not-checked-readings = anything with a meter
not-checked-switch_wiring = which leg the switch opens
not-checked-values = the values of the capacitors and resistors between line and metal
not-checked-tubes = which tubes are in it
not-checked-aerial = what the aerial or earth terminal itself could carry
not-checked-supply = the outside supply: inspect it as a unit of its own
not-checked-hidden = faults that cannot be seen, the outlet, and anything done to it since
next-step = Next: { $question }
next-reason-several = { $classes } classes are still possible. The answer can rule out { $out } of them.
next-reason-one = { $classes } classes are still possible. The answer can rule out one of them.
next-reason-together = { $classes } classes are still possible. It takes this answer together with others to rule one out.
next-reason-likely = It rules nothing out, but says what is likely, and so what to look at next.
next-reason-figure = A figure can still better the verdict.
next-reason-one-class = It can still show that the unit is better than this.
next-reason-traced = Bare metal counts as the chassis until it is traced. If it is joined to nothing, the unit may be better than this.
next-reason-lift = The earth wire may end at a switch. If there is one, this unit is worse than it looks.
next-reason-pin = The earth wire counts only if the plug has a pin for it.
next-reason-cord = Nothing with a line side is left, but nobody has looked whether there is a cord or an inlet.
next-reason-plate = One answer says that nothing in it is fed from the wall. The plate is the second witness.
next-reason-metal = Bare metal counts as the chassis until it is traced. If it is the circuit itself, this unit is worse than it looks.
next-reason-aerial = An aerial or earth terminal could give more than the metal that was found. If there is one, this unit is worse than it looks.
further-cover_off = With the cover off, by somebody who may, it could turn out to be { $class }.
further-meter = With a meter, and somebody who can use it, it could turn out to be { $class }.
further-cover_off-meter = With the cover off and a meter, by somebody who may, it could turn out to be { $class }.
further-measured = If the parts whose figures were read off are measured instead, by somebody who may, it could turn out to be { $class }.
go-on-hints = More answers can still move what is likely. That helps you decide whether to buy it, never whether to plug it in.
nothing-left = Asking stops here: no other answer that you can give with this access makes the class better.
nothing-left-shown = Asking stops here: the class is shown, and no other answer that you can give with this access makes it better.
nothing-left-untraced = Asking stops here: no other answer that you can give makes the class better, and until the bare metal is traced it may be worse.
nothing-left-lift = Asking stops here: no other answer that you can give makes the class better, and until you know whether a switch lifts the earth it may be worse.
nothing-left-pin = Asking stops here: no other answer that you can give makes the class better, and it rests on an earth pin that nobody has seen.
nothing-left-aerial = Asking stops here: no other answer that you can give makes the class better, and the aerial or earth terminal is worse to touch than the class says.
nothing-left-aerial-unseen = Asking stops here: no other answer that you can give makes the class better, and an aerial or earth terminal that nobody has looked for may be worse to touch than the class says.
nothing-left-cord = Asking stops here: nothing more can be asked, and what was found inside has to be looked at again.
nothing-left-line = Asking stops here: no cord to the wall and no inlet were seen, but something that was found belongs to one. Look again at the plug and at what was found, and take back the answer that was wrong.
nothing-left-plate = Asking stops here: the rating plate names a supply from the wall. Look again for a cord or an inlet. If one was taken out, answer “Cord or plug cut off or missing”. If both answers are right it was rebuilt: a qualified person must open it.
nothing-left-plate-unread = Asking stops here: nobody has read the rating plate. Look again for a cord, an inlet or a hole where one was, and have somebody read the plate.
nothing-left-conflict = Mend the findings that cannot all be true first.

## Beside the worst current

after-one-fault = After one fault
after-two-faults = After two faults
tag-supply = Worked out for { $volts }, { $hertz }, at up to { $highest }.

## States: these fill $plug, $switch and $selector

state-plug-first = the first way round (pin A on hot)
state-plug-second = the second way round (pin A on neutral)
state-plug-one-way = the first way round
state-plug-other-way = the second way round
state-plug-only = the only way it fits
state-switch-on = on
state-switch-off = off
state-switch-either = on or off
state-selector-near = to the near leg
state-selector-far = to the far leg
state-after-fault = After { $fault }. { $state }
state-sentence = Plug { $plug }, switch { $switch }.
state-sentence-selector = Plug { $plug }, switch { $switch }, ground switch { $selector }.
