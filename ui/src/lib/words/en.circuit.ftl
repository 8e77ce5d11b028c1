# The picture of the circuit.

circuit-see = See the way of the current
circuit-title = The way of the current
circuit-no-line = Nothing in it is fed from the wall, so there is no way for a current from there.
circuit-hot = hot
circuit-neutral = neutral
circuit-earth = earth
circuit-turn-plug = Turn the plug round
circuit-turn-switch = Turn the switch over
# $way is first or second.
circuit-plug-now =
    { $way ->
        [first] Plug: 1st way
       *[second] Plug: 2nd way
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
circuit-class = Built like this: { $class }.
circuit-walk = Four positions that show why
circuit-faults = Break one thing
circuit-quoted = Back to what the verdict quotes
