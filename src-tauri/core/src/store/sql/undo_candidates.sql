SELECT done.intent
FROM event AS done
WHERE done.unit = ?1 AND (?2 IS NULL OR done.inspection = ?2) AND done.device = ?3
    AND done.undoes IS NULL AND done.subject <> 'unit.deleted'
    AND NOT EXISTS (
        SELECT 1
        FROM event AS undo
        WHERE undo.undoes = done.intent
            AND NOT EXISTS (SELECT 1 FROM event AS redo WHERE redo.undoes = undo.intent)
    )
GROUP BY done.intent
ORDER BY max(done.seq) DESC
