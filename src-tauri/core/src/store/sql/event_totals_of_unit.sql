SELECT max(at) AS changed_at, max(demo) AS demo
FROM event
WHERE unit = ?1
