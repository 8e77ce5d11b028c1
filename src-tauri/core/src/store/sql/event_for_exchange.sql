-- A unit whose creation was lost to a damaged file stays here, and so does an inspection without its start:
-- another device would refuse what hangs in the air. A tombstone stands by itself.
SELECT seq, id, device, author, at, unit, inspection, subject, change, supersedes, intent, undoes, restores, demo
FROM event
WHERE seq > ?1 AND demo = 0
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
LIMIT ?2
