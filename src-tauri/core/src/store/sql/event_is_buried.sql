SELECT 1 FROM event WHERE unit = ?1 AND inspection IS NULL AND subject = 'unit.deleted'
