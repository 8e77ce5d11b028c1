SELECT inspection, key, value, author, at, event
FROM finding
WHERE unit = ?1 AND inspection = ?2
ORDER BY key
