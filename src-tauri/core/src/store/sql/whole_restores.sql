-- Arrived events that put back one of another subject.
SELECT event.id
FROM event
JOIN event AS back ON back.id = event.restores
WHERE event.seq > ?1
    AND NOT (back.unit = event.unit AND back.inspection IS event.inspection AND back.subject = event.subject)
LIMIT 1
