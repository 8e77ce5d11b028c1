SELECT queue.place AS queue_place, queue.state AS queue_state, queue.class, queue.basis, queue.overlays,
    queue.inspection, queue.engine_version,
    unit.id, unit.number, unit.name, unit.place, unit.kind, unit.supply, unit.state, unit.demo,
    unit.created_at, unit.changed_at, unit.state_at, unit.state_by
FROM queue
JOIN unit ON unit.id = queue.unit
WHERE (?2 IS NULL OR unit.kind = ?2)
    AND (?3 IS NULL OR unit.state = ?3)
    AND NOT EXISTS (
        SELECT 1
        FROM json_each(?1) AS word
        WHERE instr(printf('u-%04d ', unit.number) || unit.search, word.value) = 0
    )
ORDER BY unit.changed_at DESC, unit.number DESC
