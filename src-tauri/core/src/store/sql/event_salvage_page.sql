SELECT seq, id, device, author, at, unit, inspection, subject, change, supersedes, intent, undoes, restores, demo
FROM event NOT INDEXED
WHERE seq > ?1
ORDER BY seq
LIMIT ?2
