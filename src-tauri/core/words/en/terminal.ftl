# What only the terminal shows: headings of the tag and of the exposure table.

tag-worst = Worst touch
tag-permission = What may be done now
tag-cautions = Cautions
tag-next = What to do next
tag-rests-on = What it rests on

exposure-summary = { $class }. Fault margin { $margin } (3 is three or more), { $current } as found.
exposure-as-found = as found
outcome-breaker_trips = breaker trips
outcome-behind_barrier = behind a barrier

error-cannot-print = The result could not be printed.
