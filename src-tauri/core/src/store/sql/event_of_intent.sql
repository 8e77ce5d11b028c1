SELECT id, device, author, at, unit, inspection, subject, change, supersedes, intent, undoes, restores, demo
FROM event
WHERE unit = ?1 AND device = ?2 AND intent = ?3
ORDER BY seq
