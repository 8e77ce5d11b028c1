# The few labels that are the interface's own. Questions, classes, cautions and verdicts come from the core.

app-name = Cold Chassis

back = Back
next = Next
undo = Undo
change = Change
withdraw = Withdraw
units = Units
found = Found
verdict = Verdict
settings = Settings
continue = Continue

trouble-field = { $name }: { $what }
to-units = To the units
inspection-gone = This inspection is not here
trouble-unreachable = That did not work, and nothing was changed. Try once more.

## List of units

list-search = Search
list-search-hint = Name, place or number
list-new = New unit
list-empty-title = No units yet
list-empty-text = Look at the first one before it is plugged in.
list-none-found = Nothing matches “{ $text }”.
list-clear = Clear the search
list-choose = Choose a unit, or start a new one.
list-unnamed = No name
list-no-verdict = Look again
list-not_ruled_out = not ruled out
list-shown = shown
list-demo = Demo
list-demo-load = Show ten invented units
list-demo-why = A demonstration to look around in. You can remove it in one step.
list-demo-there =
    { $count ->
        [one] One invented unit is in the list.
       *[other] { $count } invented units are in the list.
    }
list-demo-remove = Remove

## New unit

new-title = New unit
new-name = Name
new-name-hint = Shelf radio, brown case
new-place = Place
new-place-hint = Stall 14
new-place-before = Used before
new-optional = optional
new-kind = Kind
new-kind-none = Not said
supply-choose = Choose
supply-missing = Choose what it is to be plugged into: the figures hang on it.
new-supply = Supply
new-supply-why = What it is to be plugged into. The worst case is worked out for this.
new-access = How far may you go?
new-access-why = Only what you allow here is asked.
access-outside = Look from outside
access-outside-note = always
access-cover_off = Take the cover off
access-cover_off-note = unplugged, charge drained
access-meter = Use a meter
access-meter-note = and know how
new-start = Start looking

## A question

torch-on = Light on
torch-off = Light off
torch-missing = The light of this device cannot be turned on from here.
question-how-to-look = How to look
question-how-and-why = How to look, and why it is asked
question-several = Tick all that you find.
question-figure = Value
question-figure-farads = As 0.047u, 47n or 470p
question-figure-ohms = As 220k, 1M or 470
question-count = How many
question-count-hint = As a figure, such as 5
question-read-marked = Read off the part
question-read-measured = Measured
question-read-how = How do you know it?
question-understood = Taken as { $value }
question-figure-empty = Enter a value.
question-figure-unreadable = Not readable as a value. Write it as 47n, 0.05 MFD, 220k or 1M.
question-figure-ambiguous = Not clear: 1,000 is one thousand to one reader and one to another. Write 1000, or 1.0.
question-figure-prefix_missing = Add p, n or u, as in 0.047u.
question-count-wrong = Enter a whole number.
question-tubes-empty = Enter at least one type.
question-keep = Keep
question-places = Tick each place that you looked at
question-places-left =
    { $count ->
        [0] All places looked at.
        [one] One place left. “None” counts only when every place was looked at.
       *[other] { $count } places left. “None” counts only when every place was looked at.
    }
question-rated-volts = Volts
question-rated-hertz = Hertz, or cycles
question-rated-watts = Watts
question-rated-empty = Enter at least one figure.
question-rated-wrong = Enter one figure, such as 117. Of several voltages, the one that is set now.

## A list of tubes

tubes-first = First type
tubes-next = Next type
tubes-hint = As printed on the tube. You can paste a whole list.
tubes-done = Done
tubes-digits = Digits
tubes-hits = Types that fit
# $written is what was typed or pasted.
tubes-for = for { $written }
tubes-by-rule = By rule, not from a list.
# Between the other names of a type and what it is.
tubes-same-and-role = { $same } · { $role }
tubes-as-written = As written
tubes-nobody-knows = Not in the list. Added as written.
tubes-added = { $type } added.
tubes-added-for = { $type } added, for { $written }.
tubes-pasted =
    { $count ->
        [one] One tube added.
       *[other] { $count } tubes added.
    }
tubes-read-as = { $type }, for { $written }.
tubes-pasted-unknown = Not known, kept as written: { $types }.
tubes-full = No more than { $most } tubes fit.
tubes-all =
    { $count ->
        [one] One tube
       *[other] { $count } tubes
    }
tubes-removed = { $type } removed.
tubes-remove = Remove { $type }
tubes-fewer = One { $type } less
tubes-more = One more { $type }
tubes-count =
    { $count ->
        [one] once
       *[other] { $count } times
    }
tubes-arrange = Change the order
tubes-arranged = Order done
tubes-up = { $type } further up
tubes-down = { $type } further down

## What the heaters say

heaters = Tubes
heaters-title = What do the tubes say?
heaters-from-list = Only a tube list? See what it says
heaters-does = Enter the types of the tubes. Their heaters add up to a hint: a string straight across the line, or a transformer.
heaters-unplug = Unplug it first. Let it cool, and do not pull hot tubes.
heaters-where-label = A label inside the cabinet, on its back or under its lid, shows which tube goes where.
heaters-where-chassis = Types are often stamped on the chassis, beside the sockets.
heaters-where-tops = Else read the glass or the base of each tube. Turn your light, not the tube.
heaters-start = Enter the tubes
heaters-add = Add a tube
heaters-example-show = Show me an example
heaters-example = An example, not your unit.
heaters-example-remove = Remove it
heaters-clear = Clear the list
heaters-cleared = The list is cleared.
heaters-supply = Line voltage
heaters-supply-why = The volts of the heaters mean something only against the line that feeds them.
heaters-hint-at = What the tubes hint at
heaters-see = See what these heaters say
heaters-never-proof = A hint, never proof.
heaters-figures = Figures to expect
heaters-cannot-prove = What the list cannot prove
heaters-sources = Each tube, and where its figures come from
heaters-of-line = of { $line } V
# In the drawing: few letters.
heaters-band = A string on the line ends here
heaters-line = line
heaters-string = in the string
heaters-rectifier = rectifier
heaters-resistor = resistor
heaters-times-higher = The line: { $times } times as high
heaters-volts = { $volts } V
heaters-amperes = { $amperes } A
heaters-left = { $volts } V left for a dropper
# Where there is no room for the whole of it.
heaters-left-short = { $volts } V left
heaters-over = { $volts } V more than the line
heaters-unknown-volts = not known
heaters-times = { $type } ×{ $count }
# Read out in the place of the drawing.
heaters-drawn-stack = Drawing: the heaters of { $types } stacked up come to { $sum } V, beside a line of { $line } V.
heaters-drawn-rectified = Drawing: the heater of { $own } across the line of { $line } V by itself; behind a rectifier and a resistor the filaments of { $types } in a string, { $sum } V together.
heaters-drawn-side = Drawing: the heaters of { $types } side by side on a few volts, beside a line of { $line } V.
heaters-place-string = In the string.
heaters-place-branch = In one of the branches of the string.
heaters-place-own_branch = On the line by itself.
heaters-place-winding = Side by side with the others.
heaters-place-no_heater = Has no heater.
heaters-place-aside = Does not count in the sum.
heaters-place-clash = Does not fit with the others.
heaters-place-unknown = Not known, not counted.

still-possible = Still possible
# Read out when an answer narrows it. $classes is a list of short class names.
still-possible-all = Still possible: { $classes }
still-possible-none = Findings disagree
still-possible-count = { $count } of { $all }

## What was found

found-title = What you found
found-empty = Nothing is answered yet.
found-go-on = Go on
found-by = by { $author }
found-withdraw-what = Withdraw: { $name }
found-change-what = Change: { $name }
found-add-reading = Add a meter reading
# Names of fields that the core reports by their path.
field-name = Name
field-place = Place
field-author = Your name
field-caption = Caption
field-volts = Volts
field-hertz = Hertz
field-watts = Watts
field-farads = Value
field-ohms = Value
found-unit = This unit
found-access = How far you may go
found-supply = Supply

## Photos

photo = Photo
photos = Photos
photo-from-file = Add photos from files
photo-open = Open the photo: { $of }
photo-whole = the unit
photo-storing = A photo is being stored.
photo-added =
    { $count ->
        [one] One photo added.
       *[other] { $count } photos added.
    }
photo-caption = Caption
photo-remove = Remove this photo
photo-gone = This photo is no longer here.
photo-gone-back = Back to the inspection
photo-unreadable = This photo cannot be read.

## The verdict

verdict-current = through the body
verdict-now = What may be done now
verdict-next = Next step
verdict-possible = What else it may be
verdict-closer = Look closer
verdict-doing = What can be done
verdict-cautions = Cautions
verdict-conflicts = Findings that disagree
verdict-again = Look again
verdict-also = Not looked at yet
verdict-rests-on = What it rests on
verdict-rests-on-one = One finding carries the verdict
verdict-not-checked = Not checked
grid-see = Every plug and switch position, fault by fault
grid-title = Position by position
grid-caption = What whoever touches the metal would get. Tap a figure.
grid-arrangement = The arrangement shown
grid-quoted = the verdict quotes this one
chart-see = What such a current does, and how soon { -a-guard } cuts it off
chart-title = Current and time
# At the head of the printed chart. $feed is what the outlet is fed by.
paper-supply =
    { $feed ->
        [both_hot] Supply: { $volts } V, { $hertz } Hz, up to { $most } V, both contacts hot
        [isolated] Supply: { $volts } V, { $hertz } Hz, up to { $most } V, behind an isolating transformer
        [step_down_auto] Supply: { $volts } V, { $hertz } Hz, up to { $most } V, behind a step-down transformer
       *[other] Supply: { $volts } V, { $hertz } Hz, up to { $most } V
    }
paper-date = Printed { $date }
chart-device = Plugged in behind
chart-no-device = Neither
chart-picture = Chart of touch current against time. The table below says the same in words.
chart-axis-current = Through the body, mA
chart-axis-time = How long it lasts
chart-table = Worst current first
chart-table-behind = Worst current first, behind { $device }
chart-current = Current
chart-lasting = Lasting { $time }
chart-behind = Behind { $device }
chart-zones = What the zones mean
chart-device-does = About the { $device }
chart-basis = What the chart rests on
verdict-whose-body = Whose body
verdict-hints = Hints
verdict-to-hints = Look at the hints
verdict-hints-why = They prove nothing and rule nothing out. They move what is likely.
verdict-others = Other inspections of this unit
verdict-new-inspection = Inspect it once more

## Settings

settings-title = Settings
settings-region = Region
settings-region-why = Sets up the supply that a new unit starts with, the paper, and what protection is called. Units that are there stay as they are.
settings-region-none = Not said
settings-region-facts = What is usual there
settings-supply = Usual supply
settings-theme = Colours
theme-system = As the system
theme-light = Light
theme-dark = Dark
theme-contrast = High contrast
settings-language = Language
language-en = English
language-de = Deutsch
settings-author = Your name
settings-author-why = Stands beside what you find from now on.
settings-demo = Demonstration
settings-first = Show the introduction

## Licences

licences-title = Licences
licences-note = Of this app, and of what others made that is in it.
licences-own = You may use, change and pass on this app under either of these two licences, as you choose.
licences-others = What others made
licences-others-what = There are { $count } packages of others in this app. Each is used under the licence that it stands below.
licences-source = Their source code can be had by name and version: of Rust packages at crates.io, of those for the screens at npmjs.com.
licences-count =
    { $count ->
        [one] 1 package
       *[other] { $count } packages
    }

## First run: three screens

first-step = { $step } of { $all }
first-start = Start
first-does-title = Know before you plug it in
first-does-1 = Answer what you can see. The app works out the worst that a touch could do to a person.
first-does-2 = It keeps to the worst case until your findings rule it out.
first-does-3 = It works without a network. Nothing leaves this device.
first-cannot-title = What it cannot know
first-cannot-1 = It knows only what you found. A wrong answer gives a wrong verdict.
first-cannot-2 = It looks at the line side. Fire, hot parts, plate voltage inside and faults that cannot be seen are not checked.
first-cannot-3 = It never replaces a qualified person, and local codes come first.
first-unplug-title = Unplug it first
first-unplug-1 = Pull the plug out of the wall. The switch is not enough.
first-unplug-2 = Take the cover off only if you know how to drain and prove the stored charge.
first-unplug-3 = If somebody has been shocked, this button is on every screen:

## Somebody has been shocked
# Common first-aid practice (common practice, from memory, not checked in print): do not touch, switch off,
# call, resuscitate at 100 to 120 compressions a minute, 5 to 6 cm deep on an adult; see a doctor afterwards.

shocked-button = Shock
shocked-button-long = Shock: somebody has been shocked
shocked-title = Somebody has been shocked
shocked-1 = Do not touch them while they may still be in contact.
shocked-1-more = The current could go through you too. Keep others away.
shocked-2 = Switch off at the outlet or the breaker, or pull the plug.
shocked-2-more = If you cannot, stay back and call. The switch on the unit is not enough.
shocked-3 = Call the emergency number.
shocked-3-more = 112 works in Europe and on many mobile phones, 911 in North America. Put the call on loudspeaker. Send somebody for a defibrillator.
shocked-4 = Not responding and not breathing normally? Start resuscitation.
shocked-4-more = Once the current is off: heel of your hand in the middle of the chest, push hard and fast, 5 to 6 cm deep, 100 to 120 times a minute. Do not stop until help takes over. Gasping is not normal breathing.
shocked-5 = Defibrillator there? Switch it on and do what it says.
shocked-6 = Awake? Keep them still and warm, and cool burns with running water.
shocked-6-more = Whoever had a shock should see a doctor, even if they feel well: the heart can be disturbed later.
shocked-note = This is common first-aid practice, not a course. Do what the emergency operator tells you.
