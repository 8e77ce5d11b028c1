# Measuring on a photo that shows a bank card.

measure-unplugged = Unplug it before you lay anything beside the plug.
measure-hint = A hint, not proof. Look at the blades yourself before you answer.
measure-counts = Drawn to the edges beside your points. Counts what a finger misses, the card’s own size, and that what you measure may stand up to 15 mm above the card.

measure-third-pin = Counts only where there is no third pin, no stub of one and no hole where one was.

blades-equal = The two blades measure alike, as on a plug that goes in both ways round.
blades-first-wider = Blade 1 measures wider than blade 2, as on a plug that fits one way only.
blades-second-wider = Blade 2 measures wider than blade 1, as on a plug that fits one way only.
blades-too-rough = It cannot be told: the widths are known too roughly. A photo from nearer, sharper and straighter on may tell. Until then take the blades as equal.
blades-neither = It cannot be told: the widths are those of neither kind of plug. Look whether each point is on the edge of a blade. Until then take the blades as equal.
blades-other-widths = It cannot be told: blades of this kind are 6.35 or 7.92 mm wide, and these are not. Look whether the card’s corners are right, and whether the plug is of another kind.
blades-other-places = It cannot be told: blades of this kind stand side by side, 12.7 mm apart, and these do not. Look whether each point is on its own blade.

measure-trouble-photo = This photo cannot be measured on.
measure-trouble-outside = A corner is outside the photo. All four corners of the card must be seen.
measure-trouble-crossed = The corners cross. Put them on the card in order, going round it.
measure-trouble-small = The card is too small in this photo. Take one from nearer.
measure-trouble-card = A bank card would not look like this. Put each point on a corner of the card, where its two sides would meet.
measure-trouble-long = Seen from so low, either side of the card could be the long one. Take a photo from further above.
measure-trouble-end = A point lies too far from the card to be measured.
measure-trouble-close = The two points are too close together.
measure-trouble-near = The camera was too near for this. Take a photo from a little further away.
