SELECT DISTINCT place
FROM unit
WHERE place <> '' AND created_at IS NOT NULL AND deleted = 0
ORDER BY place
LIMIT 200
