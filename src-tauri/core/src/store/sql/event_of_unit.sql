SELECT id, device, author, at, unit, inspection, subject, change, supersedes, intent, undoes, restores, demo
FROM event
WHERE unit = ?1
ORDER BY at, id
