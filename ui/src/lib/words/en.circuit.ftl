# The picture of the circuit.

circuit-see = See the way of the current
circuit-title = The way of the current
circuit-no-line = Nothing in it is fed from the wall, so there is no way for a current from there.

## Names in the picture. There is little room: a word or two.

circuit-supply = supply
circuit-hot = hot
circuit-neutral = neutral
circuit-earth = earth
# Two words: they stand one under the other.
circuit-wired-backwards = wired backwards
circuit-other-loads = other loads
# In front of the outlet: a transformer with two windings, or one winding with a tap.
circuit-two-windings = two windings
circuit-one-winding = one winding
# The contacts behind it: on nothing but stray capacitance, on the input or on the tap.
circuit-floats = floats
circuit-input = input
circuit-tap = tap
circuit-stray = stray
circuit-earthed = earthed
# A fault: an output that is joined to earth.
circuit-to-earth = to earth
circuit-switch = switch
circuit-ground-switch = ground switch
# The letter of the class, in a box.
circuit-class-y = Y
circuit-chassis = chassis
circuit-far-leg = far leg
circuit-near-leg = near leg
# $isolation is what stands between the supply and the common.
circuit-load =
    { $isolation ->
        [isolating] transformer
        [heater_transformer] transformer
        [autotransformer] one winding
       *[other] heaters
    }

## Beside the hand

circuit-through-body = through the body
# Follows the voltage. $level is what becomes of it.
circuit-volts =
    { $level ->
        [behind_barrier] behind it
        [breaker_trips] on the metal
       *[other] untouched
    }
# $way is first or second.
circuit-for-plug =
    { $way ->
        [first] 1st way
       *[second] 2nd way
    }
# $way is on or off.
circuit-for-switch =
    { $way ->
        [on] switch on
       *[off] switch off
    }
# $way is near or far.
circuit-for-selector =
    { $way ->
        [near] near leg
       *[far] far leg
    }
circuit-for-faults =
    { $count ->
        [0] as found
        [one] one fault
       *[other] { $count } faults
    }

## Turning and breaking

circuit-turn-plug = Turn the plug round
circuit-turn-contacts = Let the plug meet the contacts the other way round
circuit-turn-switch = Turn the switch over
circuit-turn-selector = Turn the ground switch over
# $way is first or second.
circuit-plug-now =
    { $way ->
        [first] Plug: 1st way
       *[second] Plug: 2nd way
    }
# $way is first or second; the plug goes in one way only, but behind a transformer no contact is the neutral.
circuit-contacts-now =
    { $way ->
        [first] Contacts: 1st way
       *[second] Contacts: 2nd way
    }
# $way is on or off.
circuit-switch-now =
    { $way ->
        [on] Switch: on
       *[off] Switch: off
    }
# $way is near or far.
circuit-selector-now =
    { $way ->
        [near] Ground switch: near leg
       *[far] Ground switch: far leg
    }
# Without any of the faults that are shown.
circuit-class = Built like this: { $class }.
# $count faults are shown.
circuit-class-with =
    { $count ->
        [one] Once it had this fault: { $class }.
       *[other] Once it had these faults: { $class }.
    }
# $count positions; one of them is tapped.
circuit-walk = Walk through { $count } positions that show why
circuit-walk-step = { $number } of { $count }: { $title }
circuit-faults = Break one thing
circuit-quoted = Back to what the verdict quotes

## Under the picture

circuit-legend = The thick line is the way of the current. It alternates, turning round many times a second: the arrows show one half of that.
circuit-legend-thin = The thin line is the way of the current, so little that you would hardly feel it. It alternates: the arrows show one half of that.
circuit-legend-earth = The line is the way of the current by the earth wire, past whoever stands there. It alternates: the arrows show one half of that.
circuit-legend-trips = The line is the way of the current by the earth wire until the breaker trips. Until then the metal is live, and whoever touches it is in the circuit too: the dashed line.
circuit-legend-none = No way is drawn: nobody is in the circuit in this position.
circuit-legend-tape = The pins are alike: B is the one that was marked with tape.
circuit-legend-contacts = The plug goes in one way only. But no contact of this outlet is the neutral, so either may come to stand at the higher voltage.
circuit-legend-isolated = In front stands an isolating transformer: two windings that do not touch. Only stray capacitance, drawn dotted, leads back to it from earth.
circuit-legend-auto = In front stands an autotransformer: one winding with a tap. Nothing in it isolates, and both contacts are live against earth.
circuit-legend-y = Y is a class-Y capacitor.

## Why it flows the way it does. The chassis is the metal frame; the common is what the circuit counts its volts from.

circuit-why-open = The switch is open in the way of the current, so next to nothing gets through.
circuit-why-stray = A bare wire lies on the chassis, the metal frame. The line comes to the metal without passing the switch or any part.
circuit-why-stray-holds = A bare wire lies on the chassis, the metal frame, and holds it at what that wire is at. That is low just here, and live as soon as the wire is on hot.
circuit-why-short = The bare wire and the leg that the chassis, the metal frame, is joined to are a short circuit. A fuse or a breaker may end it; until then the metal is live.
circuit-why-shorted = A capacitor that held the line back has failed and is now as good as a wire.
circuit-why-capacitor = A capacitor joins the line to the chassis, the metal frame. It lets alternating current through all the time.
circuit-why-aerial = The aerial terminal hangs on the circuit by a capacitor. It lets alternating current through all the time.
circuit-why-common = This metal is part of the circuit itself, and the circuit is on the line.
circuit-why-network = A resistor and a capacitor join the circuit to the chassis, the metal frame. They hold the line back, but not all of it.
circuit-why-trace = The line only lies close to the chassis, the metal frame. A trace of alternating current crosses even so.
circuit-why-broken-down = The insulation that held the line off the chassis, the metal frame, lets it through.
circuit-why-rectified = The rectifier joins the chassis, the metal frame, to one leg and then the other, so the metal is live whichever way round the plug is.
circuit-why-pulled-earthed = The neutral is broken in the supply. The current of the other loads comes back by this chassis and its earth wire, which holds the metal near earth as long as it lasts.
circuit-why-pulled = The neutral is broken in the supply. Other loads pull what is behind the break up to hot, and the metal with it.
circuit-why-hot = Hot is on the leg that the chassis, the metal frame, is joined to. Nothing stands between the outlet and the hand.
circuit-why-neutral = The chassis, the metal frame, is joined to the leg that is on neutral. Neutral is close to earth, so only a trace flows.
circuit-why-isolated = No wire leads back to the transformer in front. Only the stray capacitance of its windings does, so little gets through.
circuit-why-feed-earthed = One output of the transformer in front is joined to earth. So the other one is as live as hot is at an outlet, and its isolation is gone.
circuit-why-feed-earthed-low = The chassis, the metal frame, is on the output that is joined to earth, so only a trace flows. The other way round it is live.
circuit-why-input = The chassis, the metal frame, is on the contact that is joined to the input of the step-down transformer. It is at all of that voltage against earth.
circuit-why-tap = The chassis, the metal frame, is on the tap of the step-down transformer. The tap is not on earth: it is live with the rest of the winding.
circuit-why-load = The chassis is cut off from neutral, and hot comes to it from the other leg, through what is between the two.
