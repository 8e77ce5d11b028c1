-- A unit that is shown, the last inspection of it that anything was found in, and what the engine made of
-- just that, and of all else that its proof rests on. One that was only begun, as by a slip of the finger, must not hide what is known.
SELECT unit.number, unit.name, unit.place, unit.kind, unit.state, unit.demo, unit.created_at,
    last.id AS inspection,
    standing.engine_version, standing.class, standing.rank, standing.basis, standing.overlays,
    standing.proven
FROM unit
LEFT JOIN inspection AS last ON last.unit = unit.id AND last.id = (
    SELECT some.id
    FROM inspection AS some
    WHERE some.unit = unit.id AND some.started_at IS NOT NULL
    ORDER BY
        EXISTS (SELECT 1 FROM finding WHERE finding.unit = some.unit AND finding.inspection = some.id)
        OR EXISTS (SELECT 1 FROM photo WHERE photo.unit = some.unit AND photo.inspection = some.id) DESC,
        some.started_at DESC, some.id DESC
    LIMIT 1
)
LEFT JOIN standing ON standing.unit = unit.id AND standing.inspection = last.id
    AND standing.supply IS unit.supply
    AND standing.place = (SELECT max(seq) FROM event WHERE event.unit = unit.id AND event.inspection IS NOT NULL)
WHERE unit.id = ?1 AND unit.created_at IS NOT NULL AND unit.deleted = 0 AND unit.number IS NOT NULL
