# The printed report, the hang tag, the text for a message and the list of all units.

report-title = { $label } { $name }: inspection before plugging in
report-running = { $label } { $name }
report-foot = Local codes and licensed practice come first. This says what was found and worked out, not that nothing can happen.
report-page-before = Page{" "}
report-page-between = {" "}of{" "}
report-creator = Cold Chassis { $version }
report-demo = An invented unit of the demonstration.

report-now = What may be done now
report-current-of = through whoever touches it. { $state } { $supply }
report-found = What was found
report-found-question = Question
report-found-answer = Found
report-found-by = By
report-found-when = When (UTC)
report-photos = Photos
report-photo-unnamed = Photo { $number }
report-grid = Position by position
report-grid-fault = One thing at a time
report-grid-cell = { $figure } { $word }
report-circuit = The way of the current
report-chart = Current and time
report-repair = What the chosen repair changes
report-repair-unfit = The repair that was chosen does not fit what has been found since. { $why } Choose again.
report-repair-step = Step
report-repair-after = After it
report-repair-worse = Worse
report-before = Before: { $line }
report-remaining = What still makes it live
report-no-repair = No repair was chosen.
report-shortest = The shortest way: { $line }
report-parts = Parts
report-parts-what = Part
report-parts-size = Size
report-parts-notes = Mind
report-proof = Proof of the repair
report-proof-line = To be shown
report-proof-limit = Limit
report-proof-entered = Entered
report-proof-mark = Comes to
report-compared = Beside the first inspection
report-could-be = What it could still be
report-rests-on = What the verdict rests on
report-conflicts = What cannot all be true
report-next = Next
report-not-checked = What was not checked
report-basis = Where the figures come from
report-engine = Worked out by version { $version }. { $count ->
    [one] One arrangement is
   *[other] { $count } arrangements are
 } still possible.
report-when = Inspected { $began } UTC. Written { $made } UTC.
report-later = A later inspection of { $when } UTC finds: { $class }. This one may no longer hold.
report-made = { $date } UTC. { $creator }
report-signature = Checked by
report-none = none

report-list-label = Unit
report-list-name = Name
report-list-place = Place
report-list-kind = Kind
report-list-class = Class
report-list-basis = Basis
report-basis-shown = shown
report-basis-not_ruled_out = not ruled out
report-list-changed = Last changed (UTC)
report-list-state = State
report-list-since = Since (UTC)
report-list-by = Set by

report-file = { $label } { $what }
report-file-report = report
report-file-tag = tag
report-file-tags = tags
report-file-list = units

takes-drawing = takes a drawing as SVG of at most { $most } characters
takes-units = takes 1 to { $most } units that have been inspected
takes-inspected = takes units that have been inspected; { $unit } was never. Leave it out, or inspect it first
error-report = The document could not be made: { $why }
