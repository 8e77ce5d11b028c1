-- The plus signs keep SQLite on event_by_supersedes, which finds one row; by the other three columns
-- it would read all events of the subject for each of them.
SELECT id, device, author, at, unit, inspection, subject, change, supersedes, intent, undoes, restores, demo
FROM event AS head
WHERE head.unit = ?1 AND head.inspection IS ?2 AND head.subject = ?3
    AND NOT EXISTS (
        SELECT 1
        FROM event AS later
        WHERE later.supersedes = head.id
            AND +later.unit = head.unit
            AND +later.inspection IS head.inspection
            AND +later.subject = head.subject
    )
ORDER BY head.at DESC, head.id DESC
LIMIT 2
