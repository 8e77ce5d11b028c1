SELECT id, device, author, at, unit, inspection, subject, change, supersedes, intent, undoes, restores, demo
FROM event
WHERE unit = ?1 AND inspection IS NULL AND subject = 'unit.deleted'
ORDER BY at, id
