INSERT INTO finding (unit, inspection, key, value, author, at, event)
VALUES (?1, ?2, ?3, ?4, ?5, ?6, ?7)
ON CONFLICT (unit, inspection, key) DO UPDATE SET
    value = excluded.value,
    author = excluded.author,
    at = excluded.at,
    event = excluded.event
