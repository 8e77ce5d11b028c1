INSERT INTO standing (unit, inspection, engine_version, place, supply, class, rank, basis, overlays,
    proven)
VALUES (?1, ?2, ?3, ?4, ?5, ?6, ?7, ?8, ?9, ?10)
ON CONFLICT (unit) DO UPDATE SET
    inspection = excluded.inspection,
    engine_version = excluded.engine_version,
    place = excluded.place,
    supply = excluded.supply,
    class = excluded.class,
    rank = excluded.rank,
    basis = excluded.basis,
    overlays = excluded.overlays,
    proven = excluded.proven
