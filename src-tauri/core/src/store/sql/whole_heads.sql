-- Arrived events of a subject of which every event is replaced by another: they go round in a circle.
SELECT event.id
FROM event
WHERE event.seq > ?1 AND event.supersedes IS NOT NULL
    AND NOT EXISTS (
        SELECT 1 FROM event AS head
        WHERE head.unit = event.unit AND head.inspection IS event.inspection AND head.subject = event.subject
            AND NOT EXISTS (
                SELECT 1 FROM event AS later
                WHERE later.supersedes = head.id AND +later.unit = head.unit
                    AND +later.inspection IS head.inspection AND +later.subject = head.subject
            )
    )
LIMIT 1
