DELETE FROM event
WHERE unit = ?1 AND (subject <> 'unit.deleted' OR demo = 1)
