# What only the terminal shows: headings of the tag and of the exposure table.

tag-worst = Worst touch
tag-permission = What may be done now
tag-cautions = Cautions
tag-next = What to do next
tag-rests-on = What it rests on
tag-figures = Whose body

exposure-summary = { $class }. Fault margin { $margin } (3 is three or more), { $current } as found.
exposure-as-found = as found
outcome-breaker_trips = breaker trips
outcome-behind_barrier = behind a barrier

error-cannot-print = The result could not be printed.

exposure-state = { $plug }, { $switch }{ $selector }
exposure-first = pin A hot
exposure-second = pin B hot
exposure-no-selector = { "" }
exposure-selector-near = , to near leg
exposure-selector-far = , to far leg

readings-no-pins = It has no line inside and no pins to read from.

list-empty = No units in this record yet.
list-not-judged = not judged

guide-keys = Type the number of your answer (several with commas, where several may be true), ? if you cannot tell, u to undo, q to stop.
guide-prompt = >
guide-not-understood = That is none of the answers. Type a number from the list, ?, u or q.
guide-figure = Type the value as printed, such as 0.047u, 47n or 220k; put "m " before it if you measured it; ? to leave it open.
guide-reading = Type what the meter shows in ohms, such as 0.4, 270k or 2M2, or OL above its range; ? if you cannot take it.
guide-rated = Type volts, hertz and watts in this order, with a - for what the plate does not give, such as 117 60 -; ? if there is none.
guide-still-possible = Still possible: { $classes } ({ $count } arrangements)
guide-also = These answers add cautions of their own.

demo-intro = A demonstration: an invented radio on a flea market, inspected question by question. Nothing is kept.
demo-cover-off = At home, with the cover off:
demo-also = Nothing more can better the class. These answers add cautions of their own:
demo-end = That was the demonstration. To inspect a unit of your own: coldchassis inspect --access cover_off --record my.coldchassis

## Simulated inspections

simulate-intro = Synthetic units, { $units } for each line, seed { $seed }. Seconds are estimates; nobody was timed.
simulate-row = { $access }, { $kind }, { $order }: { $seconds } s ± { $error } s, { $steps } steps
reach-by-outside = from outside
reach-by-cover_off = the cover off
reach-by-meter = a meter
order-engine = this engine
order-edges_only = its edge cutting alone
order-bank = the order of the bank
order-information = the most information
order-information_per_second = the most information for each second
order-random = any order
