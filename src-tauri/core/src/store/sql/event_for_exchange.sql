SELECT seq, id, device, author, at, unit, inspection, subject, change, supersedes, intent, undoes, restores, demo
FROM event
WHERE seq > ?1 AND demo = 0
ORDER BY seq
LIMIT ?2
