INSERT INTO inspection (unit, id, started_at, access, changed_at)
VALUES (?1, ?2, ?3, ?4, ?5)
ON CONFLICT (unit, id) DO UPDATE SET
    started_at = excluded.started_at,
    access = excluded.access,
    changed_at = excluded.changed_at
