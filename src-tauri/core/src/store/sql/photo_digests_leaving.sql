SELECT DISTINCT photo.sha256
FROM photo
JOIN unit ON unit.id = photo.unit
WHERE unit.demo = 0 AND unit.created_at IS NOT NULL AND unit.deleted = 0 AND (?1 IS NULL OR unit.id = ?1)
