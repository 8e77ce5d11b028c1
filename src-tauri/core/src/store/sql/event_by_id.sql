SELECT id, device, author, at, unit, inspection, subject, change, supersedes, intent, undoes, restores, demo
FROM event
WHERE id = ?1
