-- Arrived events of an inspection that was never started in their unit.
SELECT event.id
FROM event
WHERE event.seq > ?1 AND event.inspection IS NOT NULL
    AND NOT EXISTS (
        SELECT 1 FROM event AS started
        WHERE started.unit = event.unit AND started.inspection = event.inspection
            AND started.subject = 'inspection.started'
    )
LIMIT 1
