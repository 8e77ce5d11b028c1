# The picture of one arrangement, the way of the current through it, and the walk through its states.

# $parts is a list of part messages, from the outlet on.
circuit-way = The way of the current: { $parts }.
circuit-behind = Behind it the chassis is at { $volts }.
circuit-behind-live = Behind it the chassis is at { $volts }: only what covers it keeps you off live metal.

## The parts, as the way of the current names them

part-hot_contact = hot contact
part-neutral_contact = neutral contact
part-neutral_pull = other loads on the supply
part-far_conductor = conductor of the far leg
part-near_conductor = conductor of the near leg
part-far_switch = far leg
part-near_switch = near leg
part-load = heaters or primary
part-near_chassis = joint of the near leg to the chassis
part-far_chassis = joint of the far leg to the chassis
part-near_capacitor = capacitor from the near leg to the chassis
part-far_capacitor = capacitor from the far leg to the chassis
part-stray_near = loose wire of the near leg
part-stray_far = loose wire of the far leg
part-chassis = chassis
part-common = circuit common
part-aerial_capacitor = aerial capacitor
part-aerial_terminal = aerial terminal
part-earth_wire = earth wire
part-person = you, to earth

## The walk

walk-kindest = The least in this one arrangement
walk-worst = The worst position
walk-off = Switched off
walk-on-earth = The supply on the earth wire
walk-fault = One thing fails
walk-pair = Two things fail
