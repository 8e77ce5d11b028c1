INSERT INTO photo (unit, inspection, id, finding, sha256, width, height, caption, author, at, marks, before, hints)
VALUES (?1, ?2, ?3, ?4, ?5, ?6, ?7, ?8, ?9, ?10, ?11, ?12, ?13)
ON CONFLICT (unit, inspection, id) DO UPDATE SET
    finding = excluded.finding,
    sha256 = excluded.sha256,
    width = excluded.width,
    height = excluded.height,
    caption = excluded.caption,
    author = excluded.author,
    at = excluded.at,
    marks = excluded.marks,
    before = excluded.before,
    hints = excluded.hints
