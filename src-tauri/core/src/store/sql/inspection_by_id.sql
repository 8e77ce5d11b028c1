SELECT inspection.id, inspection.unit, inspection.started_at, inspection.access, inspection.changed_at
FROM inspection
JOIN unit ON unit.id = inspection.unit
WHERE inspection.id = ?1 AND inspection.started_at IS NOT NULL
    AND unit.created_at IS NOT NULL AND unit.deleted = 0
ORDER BY inspection.started_at, inspection.unit
LIMIT 1
