SELECT 1 FROM event WHERE unit = ?1 AND subject <> 'unit.deleted' LIMIT 1
