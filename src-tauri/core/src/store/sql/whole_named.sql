-- What arrived events replace or put back and is not there.
SELECT event.id, event.supersedes AS named, 'supersedes' AS field
FROM event
WHERE event.seq > ?1 AND event.supersedes IS NOT NULL
    AND NOT EXISTS (SELECT 1 FROM event AS other WHERE other.id = event.supersedes)
UNION ALL
SELECT event.id, event.restores AS named, 'restores' AS field
FROM event
WHERE event.seq > ?1 AND event.restores IS NOT NULL
    AND NOT EXISTS (SELECT 1 FROM event AS other WHERE other.id = event.restores)
