SELECT inspection, id, finding, sha256, width, height, caption, author, at, marks, before, hints
FROM photo
WHERE unit = ?1 AND inspection = ?2
ORDER BY at, id
