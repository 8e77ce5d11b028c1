-- The plus sign keeps SQLite on the events of the unit: by place it would read all that arrived.
SELECT DISTINCT unit, inspection, subject
FROM event
WHERE unit = ?1 AND +seq > ?2
