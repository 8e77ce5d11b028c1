SELECT DISTINCT unit, inspection, subject
FROM event
