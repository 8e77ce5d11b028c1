-- Arrived events of an inspection that another unit has under the same id, here or among what arrived.
SELECT id FROM (
    SELECT event.id AS id
    FROM event
    WHERE event.seq > ?1 AND event.inspection IS NOT NULL
        AND EXISTS (
            SELECT 1 FROM inspection AS other
            WHERE other.id = event.inspection AND other.unit <> event.unit
        )
    LIMIT 1
)
UNION ALL
SELECT id FROM (
    SELECT max(event.id) AS id
    FROM event
    WHERE event.seq > ?1 AND event.inspection IS NOT NULL
    GROUP BY event.inspection
    HAVING min(event.unit) <> max(event.unit)
    LIMIT 1
)
LIMIT 1
