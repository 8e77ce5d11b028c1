SELECT inspection.id
FROM inspection
JOIN finding ON finding.unit = inspection.unit AND finding.inspection = inspection.id
WHERE inspection.unit = ?1 AND finding.key = ?2 AND inspection.started_at IS NOT NULL
ORDER BY inspection.started_at DESC, inspection.id DESC
LIMIT 1
