# The intake queue. States and classes are the core's words.

queue = Queue
# In the list of units: how many in which state, most urgent first.
queue-of-state = { $state } { $units }
queue-and = { $before } · { $after }
queue-title = Queue
queue-here = In the shop
queue-by-state = By state
queue-by-class = By class
queue-by-class-why = By class, without those handed back
queue-search = Search the queue
queue-search-hint = Name, note, tube or finding
queue-search-more = Two letters at least.
queue-order = Order
queue-worst = Worst first
queue-newest = Newest first
queue-reading = Reading the queue…
queue-reading-more = Reading more…
queue-again = Try again
queue-found =
    { $count ->
        [one] One unit
       *[other] { $count } units
    }
queue-found-more = { $count } or more
# Read under the search: it looks further than the list.
queue-everywhere = Searched in all units, those handed back too.
queue-unit = { $label } { $name }
queue-when-by = { $when }, { $who }
queue-nobody-said = Nobody has said yet how far it is.

queue-filters = Filters
queue-select = Select
queue-list = List as CSV
queue-filter-off = Take off: { $filter }
queue-filters-clear = Take filters off

## Empty

queue-empty-title = Nothing to queue yet
queue-empty-text = A unit that comes in stands here until it is handed back, the worst on top.
# Takes filters and text off.
queue-clear = Clear search and filters
queue-none-here = Nothing is in the shop. All units were handed back.
queue-none-state = Nothing is in this state: { $state }.
queue-none-fits = No unit fits these filters.
queue-none-found-filters = Nothing matches “{ $text }” with these filters.

## Filters

queue-filters-title = Filters
queue-filters-why = Of each kind any that is ticked will do.
queue-filter-states = State
queue-filter-states-why = None ticked: all that are in the shop.
queue-filter-classes = Class
queue-filter-bases = How it is known
queue-filter-overlays = Cautions
queue-filter-overlays-why = Only units with all that are ticked.
queue-filter-places = Place
queue-filter-places-find = Find a place
queue-filter-places-none = No place is written down yet.
queue-filter-places-more =
    { $count ->
        [one] One more place: type a part of its name.
       *[other] { $count } more places: type a part of a name.
    }
# So many that not all were read.
queue-filter-places-many = More than { $count } more places: type a part of a name.
queue-filter-kinds = Kind
queue-filter-came = Came in
queue-filter-from = From
queue-filter-to = To
queue-filter-turned = The first day comes after the last.
queue-since = From { $day }
queue-until = To { $day }
queue-basis-shown = Shown
queue-basis-not_ruled_out = Not ruled out
queue-show =
    { $count ->
        [0] Nothing fits
        [one] Show one unit
       *[other] Show { $count } units
    }
queue-show-more = Show { $count } units or more

## Cautions, in two or three words

queue-forbids = Do not power: { $cautions }
queue-overlay-live_inside = Live under knobs or back
queue-overlay-line_on_earth = Line on the earth wire
queue-overlay-prove_outlet = Prove the outlet
queue-overlay-earth_carries_leakage = Earth carries leakage
queue-overlay-aerial_terminal = Aerial terminal
queue-overlay-b_plus_on_terminals = Plate voltage on terminals
queue-overlay-resistance_cord = Resistance cord
queue-overlay-damaged_cord = Damaged cord
queue-overlay-aged_cord = Old cord
queue-overlay-no_fuse = No fuse
queue-overlay-fuse_in_common_leg = Fuse in the common’s leg
queue-overlay-accessory_outlet = Outlet on the unit
queue-overlay-filter_capacitors = Failed filter capacitor
queue-overlay-stored_charge = Stored charge
queue-overlay-asbestos = Asbestos
queue-overlay-selenium = Selenium rectifier
queue-overlay-pcb = PCB
queue-overlay-radium = Radium dial
queue-overlay-wrong_supply = Other supply

## The state of a unit, or of several

queue-state-title = How far is it?
queue-state = State
queue-look = Look at it
queue-look-verdict = Verdict and findings
queue-look-new = Inspect it
unit-delete = Delete this unit
unit-delete-what = All that was found of it goes for good, with its photos and the older copies of the record. It is also gone on a device that takes in your next bundle. There is no undo.
unit-delete-now = Delete { $label } for good
queue-gone = This unit is not in the queue
queue-to-queue = To the queue
queue-who = No name stands beside changes yet.
queue-who-add = Add yours
queue-who-why = Your name stands beside each change from now on. It is asked once; Settings has it.
queue-who-later = Go on without
queue-was-set = { $unit }: { $state }.
queue-were-set = { $count } units: { $state }.
# It was stopped on the way.
queue-were-set-stopped =
    { $count ->
        [one] One unit: { $state }. Left as before: { $left }.
       *[other] { $count } units: { $state }. Left as before: { $left }.
    }
queue-was-undone = { $unit } is back where it was: { $state }.
queue-were-undone = { $count } units are back where they were.
queue-doing = { $done } of { $of }
# Stops a change of several units; those that were changed stay so until they are undone.
queue-stop = Stop
queue-refused-one = Not set: { $state }
queue-refused =
    { $count ->
        [one] One unit was not set: { $state }
       *[other] { $count } units were not set: { $state }
    }
queue-to-proof = To the proof of { $label }

## Several at once

queue-picked =
    { $count ->
        [0] None selected
        [one] One selected
       *[other] { $count } selected
    }
queue-pick-hint = Tick units to do one thing with all of them.
queue-pick-all = All { $count } listed
queue-pick-none = None
queue-pick-done = Done
queue-pick-stop = Stop selecting
queue-pick-go = Go on
queue-picked-title =
    { $count ->
        [one] One unit
       *[other] { $count } units
    }
queue-picked-nothing = Nothing is selected.
queue-picked-which = Which ones
queue-picked-state = State of all of them
queue-picked-tags = Tags for the cords
queue-picked-tags-give = Make the tags
queue-picked-bundle = Bundle
queue-picked-bundle-what = All that is known of them, with photos, in one file for another device.
queue-picked-bundle-give = Save the bundle
