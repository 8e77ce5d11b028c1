-- Who said how far the work on a unit has come, and when.
ALTER TABLE unit ADD COLUMN state_at INTEGER;
ALTER TABLE unit ADD COLUMN state_by TEXT;

CREATE INDEX unit_by_place ON unit (place, created_at, deleted);

-- What the engine makes of a unit as it stands, with the version that says so. Worked out on this device,
-- never merged, not dropped when the projections are rebuilt; one that was made of something else than stands now is no longer believed.
CREATE TABLE standing (
    unit TEXT NOT NULL PRIMARY KEY,
    inspection TEXT NOT NULL,
    engine_version TEXT NOT NULL,
    -- The place in the log of the last event of an inspection of the unit, and the supply.
    place INTEGER NOT NULL,
    supply TEXT,
    -- NULL: what was found cannot be read.
    class TEXT,
    -- From the worst, 1; 0 where there is no class.
    rank INTEGER NOT NULL CHECK (rank BETWEEN 0 AND 7),
    basis TEXT,
    overlays TEXT NOT NULL CHECK (json_valid(overlays)),
    -- Whether its repair is proven.
    proven INTEGER NOT NULL CHECK (proven IN (0, 1))
) STRICT;

-- Projection: the units that are shown, in the order of the queue.
CREATE TABLE queue (
    -- The order: rank of the class, where 0 is not known, then the newest first. See store/queue/place.rs.
    place INTEGER PRIMARY KEY,
    unit TEXT NOT NULL UNIQUE,
    -- As it was said, but that ready without its proof, or not known to have it, is proof open.
    state TEXT NOT NULL,
    class TEXT,
    basis TEXT,
    overlays TEXT NOT NULL CHECK (json_valid(overlays)),
    -- The inspection that the class is of; NULL where there is none.
    inspection TEXT,
    -- The version that the class is by; NULL while it has to be worked out.
    engine_version TEXT,
    demo INTEGER NOT NULL
) STRICT;

CREATE INDEX queue_by_state ON queue (state, class, demo);
CREATE INDEX queue_by_engine ON queue (engine_version, place) WHERE inspection IS NOT NULL;

-- Projection: what can be searched for in a unit, under its place in the queue. `facets` holds words that
-- no person types, one for each thing that can be filtered by.
CREATE VIRTUAL TABLE unit_text USING fts5 (
    words,
    facets,
    tokenize = 'unicode61 remove_diacritics 2',
    prefix = '2 3'
);

-- What is deleted is taken out of the index, not only marked: it may be somebody's name.
INSERT INTO unit_text (unit_text, rank) VALUES ('secure-delete', 1);
