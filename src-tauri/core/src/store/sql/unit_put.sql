INSERT INTO unit
    (id, claim, claim_at, claim_event, name, place, kind, supply, state, search, demo,
     created_at, changed_at, deleted, state_at, state_by)
VALUES (?1, ?2, ?3, ?4, ?5, ?6, ?7, ?8, ?9, ?10, ?11, ?12, ?13, ?14, ?15, ?16)
ON CONFLICT (id) DO UPDATE SET
    claim = excluded.claim,
    claim_at = excluded.claim_at,
    claim_event = excluded.claim_event,
    name = excluded.name,
    place = excluded.place,
    kind = excluded.kind,
    supply = excluded.supply,
    state = excluded.state,
    search = excluded.search,
    demo = excluded.demo,
    created_at = excluded.created_at,
    changed_at = excluded.changed_at,
    deleted = excluded.deleted,
    state_at = excluded.state_at,
    state_by = excluded.state_by
