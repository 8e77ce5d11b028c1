INSERT INTO queue (place, unit, state, class, basis, overlays, inspection, engine_version, demo)
VALUES (?1, ?2, ?3, ?4, ?5, ?6, ?7, ?8, ?9)
ON CONFLICT (place) DO UPDATE SET
    state = excluded.state,
    class = excluded.class,
    basis = excluded.basis,
    overlays = excluded.overlays,
    inspection = excluded.inspection,
    engine_version = excluded.engine_version,
    demo = excluded.demo
