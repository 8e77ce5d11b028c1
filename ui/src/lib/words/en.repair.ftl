# What a repair would change, and the stack that is put together. What each repair is and does comes from the core.

repairs-see = What a repair would change
repairs-title = What a repair would change
repairs-looking = Working it out …
repairs-no-line = Nothing in it is fed from the wall, so there is nothing here to repair against shock.
repairs-disagree = Some findings cannot all be true. Mend that first: what stands here is judged over all that any of them leaves.
repairs-to-conflict = Look at what disagrees
repairs-now = Where it stands now
repairs-shortest = Shortest way to two faults
repairs-in-unit = The shortest that stays with the unit
repairs-take = Take this way as the stack
repairs-take-in-unit = Take the way that stays with the unit
repairs-each = Each by itself
repairs-each-why = As if it were the only one, from where the unit stands now. Put several together into a stack to see what they do together.
repairs-idle =
    { $count ->
        [one] One that changes no touch current
       *[other] { $count } that change no touch current
    }
repairs-refused =
    { $count ->
        [one] One that is not offered, and why
       *[other] { $count } that are not offered, and why
    }
repairs-last = Before you begin, and afterwards
repairs-costs-are = Minutes and prices are common practice and rough; prices in US dollars or euros.

# The table of before and after. The short class words come from the core.
repairs-before = Before
repairs-after = After
repairs-becomes = becomes
repairs-class = Class
repairs-margin = Faults it takes
repairs-margin-of =
    { $margin ->
        [0] none
        [1] one
        [2] two
       *[other] three or more
    }
repairs-worst = At worst
repairs-as-found = As it stands
repairs-same = stays so: at worst { $worst }, as it stands { $found }.
repairs-worse = This makes something worse.
repairs-none = This changes no touch current.
repairs-on-earth = One position puts the supply on the earth wire: it is live whatever these currents are.
repairs-not = What it does not do:
repairs-remains = What remains after it
repairs-now-remains = What is enough for it
repairs-of-worst = What is the worst now, by itself:
repairs-in-shortest = a step of the shortest way
repairs-minutes = about { $minutes } min
repairs-price = parts about { $price } dollars or euros
repairs-free = no parts

repairs-add = Add to the stack
repairs-add-what = Add to the stack: { $what }
repairs-added = In your stack
repairs-stack-see =
    { $count ->
        [one] Your stack: one step
       *[other] Your stack: { $count } steps
    }
repairs-chosen-see =
    { $count ->
        [one] The repair that you chose: one step
       *[other] The repair that you chose: { $count } steps
    }

## The stack

repairs-stack = Repairs in order
repairs-stack-empty = Nothing is in the stack yet. Add the first step below.
repairs-steps = Steps
repairs-step = Step { $number }
repairs-out = Take out
repairs-out-what = Take out: { $what }
repairs-whole = All of it together
repairs-next = What may follow
repairs-first = What to begin with
repairs-next-why = What each does after the steps above.
repairs-next-none = Nothing more is offered.
repairs-choose = Choose this as the repair
repairs-chosen = This is the repair you chose.
repairs-unchoose = Take the choice back
repairs-another-chosen =
    { $count ->
        [one] Another stack is chosen, with one step.
       *[other] Another stack is chosen, with { $count } steps.
    }
repairs-show-chosen = Show it
# $why goes on from the name: “is not offered there: …”
repairs-refused-step = “{ $step }” { $why }
repairs-nothing-done = Nothing is done yet, and nothing is proven: these are figures for the unit once it is repaired so.
repairs-see-grid = Before and after, fault by fault
repairs-see-circuit = Before and after in the circuit
repairs-see-parts = Parts to buy
repairs-see-proof = Prove the repair
repairs-see-proof-note = What to measure afterwards, line by line
repairs-to-stack = To the stack
repairs-to-list = To all repairs
repairs-to-dropper = Size a dropper for the heaters: resistor, capacitor or diode

## Parts

repairs-parts = Parts to buy
repairs-parts-none = This stack takes no parts.
repairs-parts-no-stack = Nothing is in the stack, so there is nothing to buy.
repairs-parts-how = How, and what to mind
repairs-parts-for = for: { $step }
repairs-parts-figures = Each size is worked out from what is known of the unit and its supply. The rating on the old part, where it is the right one, comes first.
repairs-limit = Class Y for a touch current of at most
repairs-limit-why = At the highest supply voltage. The smaller the limit, the smaller the capacitor.
repairs-limit-of = { $limit } mA
repairs-limit-0_25 = without an earth wire, class II (IEC 60335-1, as quoted)
repairs-limit-0_5 = with two wires (UL 101, as quoted)
repairs-limit-0_75 = portable, with an earth wire (IEC 60335-1, as quoted)
repairs-limit-other = as it was chosen before

## Before and after

repairs-grid = Before and after, fault by fault
repairs-circuit = Before and after in the circuit
repairs-quoted = the worst that would be left
repairs-side = Which is shown
# Read out when another position is looked at.
repairs-side-says = { $side }: { $what }.
repairs-not-there = there is no such fault
repairs-plug-fixed = Afterwards the plug goes in one way only, so it is shown that way.
repairs-plug-fixed-before = Before, the plug goes in one way only, so it is shown that way.
repairs-fault-gone = What fails here is not there afterwards, so after is shown without it.
repairs-fault-new = What fails here is not there before, so before is shown without it.
repairs-only-before = only before
repairs-only-after = only after
repairs-worst-before = Worst before
repairs-worst-after = Worst after
repairs-no-picture = Nothing in it is fed from the wall, so there is no circuit to show.
repairs-between = Between the two: { $steps }
repairs-stack-empty-between = Nothing is in the stack yet, so before and after are the same.
