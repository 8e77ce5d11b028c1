-- Arrived events of an inspection that another unit has under the same id.
SELECT event.id
FROM event
WHERE event.seq > ?1 AND event.inspection IS NOT NULL
    AND (
        EXISTS (
            SELECT 1 FROM inspection AS other
            WHERE other.id = event.inspection AND other.unit <> event.unit
        )
        OR EXISTS (
            SELECT 1 FROM event AS other
            WHERE other.seq > ?1 AND other.inspection = event.inspection AND other.unit <> event.unit
        )
    )
LIMIT 1
