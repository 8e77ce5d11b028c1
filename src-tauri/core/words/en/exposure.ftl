# The grid of states and single faults, and the picture of one arrangement.

grid-of-one = One arrangement is left, and this is it. Each figure is for the worst ends of its parts, at { $volts }.
grid-of-worst = { $count } arrangements are still possible. This is the worst of them; each figure is for the worst ends of its parts, at { $volts }.
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
