-- Units whose class has to be worked out, the worst-placed first; then those by another version, the best-placed first,
-- for a class can only be too kind there.
SELECT * FROM (
    SELECT unit, inspection FROM queue
    WHERE inspection IS NOT NULL AND engine_version IS NULL
    ORDER BY place LIMIT ?2
)
UNION ALL
SELECT * FROM (
    SELECT unit, inspection FROM queue
    WHERE inspection IS NOT NULL AND engine_version < ?1
    ORDER BY engine_version DESC, place DESC LIMIT ?2
)
UNION ALL
SELECT * FROM (
    SELECT unit, inspection FROM queue
    WHERE inspection IS NOT NULL AND engine_version > ?1
    ORDER BY engine_version DESC, place DESC LIMIT ?2
)
LIMIT ?2
