SELECT id, number, name, place, kind, supply, state, demo, created_at, changed_at, state_at, state_by
FROM unit
WHERE created_at IS NOT NULL AND deleted = 0
    AND (?2 IS NULL OR kind = ?2)
    AND (?3 IS NULL OR state = ?3)
    AND NOT EXISTS (
        SELECT 1
        FROM json_each(?1) AS word
        WHERE instr(printf('u-%04d ', unit.number) || unit.search, word.value) = 0
    )
ORDER BY changed_at DESC, number DESC
