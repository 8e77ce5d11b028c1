SELECT undo.intent
FROM event AS undo
WHERE undo.unit = ?1 AND (?2 IS NULL OR undo.inspection = ?2) AND undo.device = ?3
    AND undo.undoes IS NOT NULL AND undo.subject <> 'unit.deleted'
    AND NOT EXISTS (
        SELECT 1 FROM event AS undone WHERE undone.intent = undo.undoes AND undone.undoes IS NOT NULL
    )
    AND NOT EXISTS (SELECT 1 FROM event AS redo WHERE redo.undoes = undo.intent)
    AND undo.seq > (
        SELECT coalesce(max(newest.seq), 0)
        FROM event AS newest
        WHERE newest.unit = ?1 AND (?2 IS NULL OR newest.inspection = ?2)
            AND newest.device = ?3 AND newest.undoes IS NULL
    )
GROUP BY undo.intent
ORDER BY max(undo.seq) DESC
