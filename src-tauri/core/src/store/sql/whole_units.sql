-- Arrived events of a unit that was never created.
SELECT event.id
FROM event
WHERE event.seq > ?1 AND event.subject NOT IN ('unit.created', 'unit.deleted')
    AND NOT EXISTS (
        SELECT 1 FROM event AS created
        WHERE created.unit = event.unit AND created.inspection IS NULL
            AND created.subject IN ('unit.created', 'unit.deleted')
    )
LIMIT 1
