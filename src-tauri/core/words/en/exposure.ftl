# The grid of states and single faults, and the picture of one arrangement.

grid-of-one = One arrangement is left, and this is it. Each figure is for the worst ends of its parts, at { $volts }. A position that is low here is no way to use it: a fault, or an outlet wired backwards, can change it.
grid-of-worst = { $count } arrangements are still possible. This is the worst of them; each figure is for the worst ends of its parts, at { $volts }. In another of them a position that is low here can be live: no position is cleared.
grid-conflict = Some findings cannot all be true. Until that is mended, this is the worst that any of them leaves.
grid-no-line = Nothing in it is fed from the wall, so there are no states and no currents to show.
grid-line-on-earth = With this arrangement one position puts the supply on the earth wire. It is live whatever these currents are.
grid-two-faults = This shows one fault at a time. The class also counts two at once.

grid-as-found = As found
grid-way-first = 1st way
grid-way-second = 2nd way
grid-on = On
grid-off = Off
grid-ground-near = Near leg
grid-ground-far = Far leg

# What a cell is called, beside its figure.
cell-below = faint at most
cell-leaks = you jump
cell-live = no let-go
cell-breaker_trips = breaker trips
cell-behind_barrier = out of reach

# $state says the fault, the plug and the switch.
cell-touch = { $state } Whoever touches its metal gets { $current }; with nobody touching it, the metal is at { $volts }.
cell-trips-what = { $state } So much current goes to earth that the breaker trips. Until it does, whoever touches the metal is in the circuit.
cell-barrier-what = { $state } Nothing that is joined to the circuit can be touched.

## The chart: touch current against time

# A state as found or after $fault.
chart-case = { $fault }: { $position }
chart-after = After { $fault }
chart-position = { $way }, { $switches }
chart-switches = { $switch }, { $selector }
chart-switch-on = switch on
chart-switch-off = switch off
chart-ground-near = ground switch to the near leg
chart-ground-far = ground switch to the far leg

chart-shown = Shown is every position as found, and the worst that one fault does.
chart-shown-pairs = Shown is every position as found, and the worst that one fault does; two faults at once only where the verdict quotes them.
# Our own estimate, for the worst: nobody knows how long somebody hangs on.
chart-lasts = A touch is taken to last { $time }, to the end of the chart: who cannot let go stays on it (our own estimate).

chart-at-most = { $time } at most
chart-need-not-trip = need not trip

chart-too-little = Too little for the chart, which begins at { $least }.
chart-out-of-reach = Nothing that is joined to the circuit can be touched.
chart-breaker-trips = So much current goes to earth that the breaker trips. Until it does, whoever touches the metal is in the circuit.

## Zones and lines of alternating current (IEC 60479-1, figure 20; names as in the standard, the rest in plain words)

chart-zone-ac_1 = AC-1
chart-zone-ac_1-brief = hardly felt
chart-zone-ac_1-what = You may just feel it. Usually nobody starts.
chart-zone-ac_2 = AC-2
chart-zone-ac_2-brief = felt, you jump
chart-zone-ac_2-what = You feel it and your muscles jerk. Usually it does no harm by itself; a fall can.
chart-zone-ac_3 = AC-3
chart-zone-ac_3-brief = cramps, hard to let go
chart-zone-ac_3-what = Muscles cramp: your hands may not let go, breathing gets hard, the heart may lose its beat for a while. Usually no lasting harm.
chart-zone-ac_4_1 = AC-4.1
chart-zone-ac_4_1-brief = can stop the heart
chart-zone-ac_4_1-what = The heart may stop pumping: in up to about 5 of 100 people.
chart-zone-ac_4_2 = AC-4.2
chart-zone-ac_4_2-brief = can stop the heart, up to half
chart-zone-ac_4_2-what = The heart may stop pumping: in up to about half of all people.
chart-zone-ac_4_3 = AC-4.3
chart-zone-ac_4_3-brief = stops the heart of more than half
chart-zone-ac_4_3-what = The heart stops pumping in more than half of all people. Breathing can stop too, and it burns.

chart-line-a = Line a, where feeling begins: { $mark }.
chart-line-b = Line b, where hands may not let go: { $mark }.
chart-line-c1 = Line c1, where the heart may stop: { $mark }.
chart-line-c2 = Line c2, about 5 of 100: { $mark }.
chart-line-c3 = Line c3, about half: { $mark }.
chart-mark-verified = IEC 60479-1, figure 20, as quoted in print
chart-mark-memory_high = IEC 60479-1, figure 20, from memory
chart-mark-memory_medium = IEC 60479-1, figure 20, from memory, not checked in print
chart-mark-memory_low = IEC 60479-1, figure 20, from memory, with little certainty

# $factor of hand to hand: IEC 60479-1, as quoted in print.
chart-path = The lines are for the path from the left hand to both feet, and so are the currents; on metal that is held, from both hands to both feet. Both count in full for the heart (heart-current factor 1). From hand to hand less flows, and it counts { $factor } of that.
chart-other-hertz = The lines are for { $low } to { $high }; this supply is at { $hertz }, so they hold only roughly.

## Devices that cut a touch off. UL 943 and IEC 61008-1 as quoted in print, but where a line says otherwise.

chart-gfci = GFCI
chart-gfci-trips = From { $must } on it has to trip, the sooner the more flows. Below { $never } it must not; between the two it may.
chart-gfci-neutral = With a broken neutral in the supply it may have nothing to trip with, so there it is not counted on (from memory).
chart-gfci-source = Class A, UL 943, as quoted by makers of such devices: the time is (20 mA divided by the current) to the power of 1.43, in seconds.
chart-rcd = RCD 30 mA
chart-rcd-trips = From { $rated } on it has to trip within { $once }, from twice that within { $twice }, from five times that within { $five }. Below { $rated } it need not.
chart-rcd-source = General type, IEC 61008-1, as quoted in print; the time at twice the current is from memory.
chart-device-blind = It does not see a touch from hot to neutral, only current that leaves for earth.
# Reference: standards.md, from memory.
chart-device-direct = Direct current that a half-wave rectifier draws can blind an RCD of type AC; type A stands 6 mA of it (from memory).
chart-device-rectified = What a rectifier on the line passes is no plain alternating current: it is not counted on here.
chart-device-isolated = Behind an isolating transformer it sees nothing of a touch: it is not counted on here.
chart-device-whole = It does not make the current smaller: until it trips, all of it flows.
