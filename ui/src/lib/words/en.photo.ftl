# A photo by itself: looked at closely, marked, put in order, paired.

photo-closer = Look closer and mark
photo-viewer = The photo over the whole screen
photo-close = Close
photo-larger = Larger
photo-smaller = Smaller
photo-hints = A hint only: keep it if it shows what you need.
photo-earlier = Move earlier
photo-later = Move later
photo-pair = Shows after; before is
photo-pair-none = no other photo
photo-before = Before
photo-after = After
photo-compare = How much of the photo of after is shown, percent
photo-share = Give away with its marks
photo-marks = Marked
mark-tools = What to mark with
mark-pin = Pin
mark-arrow = Arrow
mark-box = Box
mark-caption = What it shows
mark-remove = Remove this mark
mark-how-look = Two fingers or a double tap enlarge. Tap a mark to change it, drag it to move it.
mark-how-pin = Tap where the pin goes.
mark-how-drag = Drag from one end to the other.
mark-pin-number = Pin { $number }
mark-none = without words
