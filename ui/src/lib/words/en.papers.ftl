# Report, tag and message.

papers-title = Report and tag
papers-see = Report, tag, message
papers-report = Report
papers-report-what = Everything on paper: the verdict first, then what was found, photos, figures, repair and proof.
papers-paper = Paper
papers-a4 = A4
papers-letter = Letter
papers-report-give = Make the report
papers-tag = Tag for the cord
papers-tag-what = Readable at arm’s length, with a code that can be read without a network.
papers-label = Printed on
papers-label62 = Label, 62 × 100 mm
papers-four_by_six = Label, 4 × 6 in
papers-sheet_of_eight = A4, room for eight
papers-tag-give = Make the tag
papers-message = Message
papers-copy = Copy
papers-copied = Copied.
papers-share = Share
papers-made = Made: { $name }
