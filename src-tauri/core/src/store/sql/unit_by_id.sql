SELECT id, number, name, place, kind, supply, state, demo, created_at, changed_at, state_at, state_by
FROM unit
WHERE id = ?1 AND created_at IS NOT NULL AND deleted = 0
