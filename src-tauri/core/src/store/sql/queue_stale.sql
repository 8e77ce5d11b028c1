-- Units whose class has to be worked out, or was by another version; the worst-placed first within each.
SELECT * FROM (
    SELECT unit, inspection FROM queue
    WHERE inspection IS NOT NULL AND engine_version IS NULL
    ORDER BY place LIMIT ?2
)
UNION ALL
SELECT * FROM (
    SELECT unit, inspection FROM queue
    WHERE inspection IS NOT NULL AND engine_version < ?1
    LIMIT ?2
)
UNION ALL
SELECT * FROM (
    SELECT unit, inspection FROM queue
    WHERE inspection IS NOT NULL AND engine_version > ?1
    LIMIT ?2
)
LIMIT ?2
