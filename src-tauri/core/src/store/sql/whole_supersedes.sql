-- Arrived events that replace one of another subject.
SELECT event.id
FROM event
JOIN event AS replaced ON replaced.id = event.supersedes
WHERE event.seq > ?1
    AND NOT (replaced.unit = event.unit AND replaced.inspection IS event.inspection
        AND replaced.subject = event.subject)
LIMIT 1
