INSERT INTO verdict (unit, inspection, engine_version, at, verdict)
VALUES (?1, ?2, ?3, ?4, ?5)
