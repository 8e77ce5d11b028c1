INSERT INTO standing (unit, inspection, engine_version, changed_at, supply, class, rank, basis, overlays)
VALUES (?1, ?2, ?3, ?4, ?5, ?6, ?7, ?8, ?9)
ON CONFLICT (unit) DO UPDATE SET
    inspection = excluded.inspection,
    engine_version = excluded.engine_version,
    changed_at = excluded.changed_at,
    supply = excluded.supply,
    class = excluded.class,
    rank = excluded.rank,
    basis = excluded.basis,
    overlays = excluded.overlays
