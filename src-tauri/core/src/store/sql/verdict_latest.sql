SELECT inspection, engine_version, at, verdict
FROM verdict
WHERE inspection = ?1
ORDER BY seq DESC
LIMIT 1
