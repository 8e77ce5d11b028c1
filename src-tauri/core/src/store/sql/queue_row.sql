SELECT queue.place AS queue_place, queue.state AS queue_state, queue.class, queue.basis, queue.overlays,
    queue.inspection, queue.engine_version,
    unit.id, unit.number, unit.name, unit.place, unit.kind, unit.supply, unit.state, unit.demo,
    unit.created_at, unit.changed_at, unit.state_at, unit.state_by
FROM queue
JOIN unit ON unit.id = queue.unit
WHERE queue.place = ?1
