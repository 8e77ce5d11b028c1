# Measuring on a photo with a card beside the plug: corners, points, what came of them, and how to take such a photo.

measuring-open = Measure on this photo
measuring-step = Step { $step } of 3
measuring-board = The photo, with points to drag
measuring-help = How to take the photo
measuring-to-photo = Back to the photo
measuring-larger = Larger
measuring-smaller = Smaller
measuring-nudges = Move the point by one pixel
measuring-nudge-left = One pixel to the left
measuring-nudge-right = One pixel to the right
measuring-nudge-up = One pixel up
measuring-nudge-down = One pixel down
measuring-moved = { $point }: { $x }, { $y } px
measuring-wait = Measuring …

measuring-corners = Put the four corners on the corners of the card
measuring-corners-note = Drag the numbered grips. Put each point where two sides of the card would meet.
measuring-corner = Corner { $sign }
measuring-corner-open = Corner { $sign } is still where it began. Put it on the card.
measuring-corners-next = Next: what to measure

measuring-what = What do you measure?
measuring-what-blades = The two blades of the plug
measuring-what-blades-note = Of one width, or is one wider?
measuring-what-length = A length
measuring-what-length-note = Between two points, in millimetres

measuring-blades = Put the points on both edges of each blade
measuring-blades-bring = Tap between the blades: the points come to them.
measuring-blades-note = 1 and 1 go on the edges of one blade, 2 and 2 on those of the other.
measuring-blades-point = Blade { $sign }, { $edge ->
    [first] first edge
   *[second] second edge
 }
measuring-blades-open = { $point } is still where it began. Put it on its edge.
measuring-length = Put the points on both ends of the length
measuring-length-bring = Tap the middle of the length: the points come to it.
measuring-length-note = Two fingers enlarge the photo and move it.
measuring-length-point = End { $sign }
measuring-length-open = { $point } is still where it began. Put it where the length ends.
measuring-measure = Measure

measuring-picture = What was measured
measuring-ratio = The wider blade over the narrower
measuring-ratio-note = Equal blades: 1. One wider: about 1.25, that is 7.92 to 6.35 mm (NEMA WD 6, from memory).
measuring-width = Width of blade { $sign }
measuring-from-to = From A to B
measuring-no-length = No length can be told
measuring-answer = Answer the plug question: { $answer }
measuring-answer-note = You give the answer there, by your own tap. Nothing is answered by measuring.
measuring-answered = You have answered the plug question so already.
measuring-move-points = Move the points
measuring-move-corners = Move the corners
measuring-again = Measure again
measuring-done = Done
measuring-offered = as measured on the photo, if there is no third pin, stub or hole

measuring-how = Measure the blades on a photo
measuring-how-why = Is one blade wider? A photo with a card beside the plug can tell.
measuring-how-unplug = Unplug it first. Nothing is laid beside a plug that is in an outlet.
measuring-how-stand = Stand the plug up, its blades towards you.
measuring-how-card = Lay a card as large as a bank card flat beside it, on a book or a box, so that the tips of the blades stand 5 to 15 mm above the card: a finger’s width at most.
measuring-how-number = Any such card will do, as a club card. Cover the number of a bank card.
measuring-how-above = Hold the camera straight above both, so near that the card takes up about half of the photo, all four corners to be seen.
measuring-how-light = Light from the side and no flash: glare hides the edges.
measuring-how-last = Measure on the last photo of the plug
