SELECT max(at) AS changed_at
FROM event
WHERE unit = ?1 AND inspection = ?2
