-- As event_for_exchange.sql, of one unit.
SELECT id, device, author, at, unit, inspection, subject, change, supersedes, intent, undoes, restores, demo
FROM event
WHERE unit = ?1 AND demo = 0
    AND (subject = 'unit.deleted' OR EXISTS (
        SELECT 1 FROM event AS created
        WHERE created.unit = event.unit AND created.inspection IS NULL AND created.subject = 'unit.created'
    ))
    AND (inspection IS NULL OR EXISTS (
        SELECT 1 FROM event AS started
        WHERE started.unit = event.unit AND started.inspection = event.inspection
            AND started.subject = 'inspection.started'
    ))
ORDER BY seq
