-- "CCHS" in ASCII: tells our files from any other SQLite file before anything is written.
PRAGMA application_id = 1128482899;

-- The record. Every human change is one row; everything else but the verdict snapshots is rebuilt from it.
CREATE TABLE event (
    -- Order of arrival in this file. It never decides a winner; undo and the exchange follow it.
    seq INTEGER PRIMARY KEY AUTOINCREMENT,
    id TEXT NOT NULL UNIQUE CHECK (length(id) = 36),
    device TEXT NOT NULL CHECK (device <> ''),
    author TEXT NOT NULL,
    -- UTC milliseconds, from 1970 to the end of the year 9999.
    at INTEGER NOT NULL CHECK (at BETWEEN 0 AND 253402300799999),
    unit TEXT NOT NULL CHECK (length(unit) = 36),
    inspection TEXT CHECK (length(inspection) = 36),
    subject TEXT NOT NULL CHECK (length(subject) BETWEEN 1 AND 200),
    -- JSON; NULL when the subject is withdrawn.
    change TEXT CHECK (json_valid(change) AND json_type(change) <> 'null'),
    -- No foreign key: what it replaces may arrive later, from another device.
    supersedes TEXT CHECK (length(supersedes) = 36 AND supersedes <> id),
    intent TEXT NOT NULL CHECK (length(intent) = 36),
    undoes TEXT CHECK (length(undoes) = 36 AND undoes <> intent),
    restores TEXT CHECK (length(restores) = 36 AND restores <> id),
    demo INTEGER NOT NULL DEFAULT 0 CHECK (demo IN (0, 1)),
    -- Only an undo puts something back; a tombstone is of a whole unit and says what it buries.
    CHECK (restores IS NULL OR undoes IS NOT NULL),
    CHECK (subject <> 'unit.deleted' OR (change IS NOT NULL AND inspection IS NULL))
) STRICT;

CREATE INDEX event_by_key ON event (unit, inspection, subject, at, id);
CREATE INDEX event_by_supersedes ON event (supersedes) WHERE supersedes IS NOT NULL;
CREATE INDEX event_by_intent ON event (intent);
CREATE INDEX event_by_undoes ON event (undoes) WHERE undoes IS NOT NULL;

-- Names the units whose events may be deleted. Empty outside the transaction of a purge.
CREATE TABLE purge_permit (
    unit TEXT NOT NULL PRIMARY KEY
) STRICT;

CREATE TRIGGER event_is_never_changed BEFORE UPDATE ON event
BEGIN
    SELECT RAISE(ABORT, 'an event is never changed');
END;

CREATE TRIGGER event_is_only_purged BEFORE DELETE ON event
WHEN NOT EXISTS (SELECT 1 FROM purge_permit WHERE purge_permit.unit = OLD.unit)
    OR (OLD.subject = 'unit.deleted' AND OLD.demo = 0)
BEGIN
    SELECT RAISE(ABORT, 'an event is never deleted');
END;

-- Projection: one row for each unit that an event names, shown or not.
CREATE TABLE unit (
    id TEXT NOT NULL PRIMARY KEY,
    number INTEGER CHECK (number > 0),
    -- The number that its creation asked for, and what ranks it against others that ask for the same.
    claim INTEGER,
    claim_at INTEGER,
    claim_event TEXT,
    name TEXT,
    place TEXT,
    kind TEXT,
    supply TEXT CHECK (json_valid(supply)),
    state TEXT,
    -- Lower-case text to search in: SQLite folds ASCII only.
    search TEXT NOT NULL DEFAULT '',
    demo INTEGER NOT NULL DEFAULT 0 CHECK (demo IN (0, 1)),
    -- NULL: not created yet, or deleted.
    created_at INTEGER,
    changed_at INTEGER NOT NULL,
    deleted INTEGER NOT NULL DEFAULT 0 CHECK (deleted IN (0, 1))
) STRICT;

CREATE UNIQUE INDEX unit_by_number ON unit (number);

-- Projection: one row for each inspection that an event names, shown or not.
-- The unit is part of the key, so that a file that gives one id to two units cannot mix them.
CREATE TABLE inspection (
    unit TEXT NOT NULL REFERENCES unit (id) ON DELETE CASCADE,
    id TEXT NOT NULL,
    -- NULL: not started yet, or its start was undone.
    started_at INTEGER,
    access TEXT CHECK (json_valid(access)),
    changed_at INTEGER NOT NULL,
    PRIMARY KEY (unit, id)
) STRICT;

CREATE INDEX inspection_by_id ON inspection (id);

-- Projection: the winning answers, values, readings and lists.
CREATE TABLE finding (
    unit TEXT NOT NULL,
    inspection TEXT NOT NULL,
    key TEXT NOT NULL,
    value TEXT NOT NULL CHECK (json_valid(value)),
    author TEXT NOT NULL,
    at INTEGER NOT NULL,
    event TEXT NOT NULL,
    PRIMARY KEY (unit, inspection, key),
    FOREIGN KEY (unit, inspection) REFERENCES inspection (unit, id) ON DELETE CASCADE
) STRICT;

-- Projection: the photos that were added and not removed. Files are named by `sha256`.
CREATE TABLE photo (
    unit TEXT NOT NULL,
    inspection TEXT NOT NULL,
    id TEXT NOT NULL,
    -- The path of the finding it shows, such as answers.plug; NULL: the unit as a whole.
    finding TEXT,
    sha256 TEXT NOT NULL CHECK (length(sha256) = 64),
    width INTEGER NOT NULL CHECK (width > 0),
    height INTEGER NOT NULL CHECK (height > 0),
    caption TEXT NOT NULL DEFAULT '',
    author TEXT NOT NULL,
    at INTEGER NOT NULL,
    PRIMARY KEY (unit, inspection, id),
    FOREIGN KEY (unit, inspection) REFERENCES inspection (unit, id) ON DELETE CASCADE
) STRICT;

-- Snapshots of what the engine said. Kept as they were: never merged, never rebuilt.
CREATE TABLE verdict (
    seq INTEGER PRIMARY KEY AUTOINCREMENT,
    unit TEXT NOT NULL,
    inspection TEXT NOT NULL,
    engine_version TEXT NOT NULL,
    at INTEGER NOT NULL,
    verdict TEXT NOT NULL CHECK (json_valid(verdict))
) STRICT;

CREATE INDEX verdict_by_inspection ON verdict (inspection, seq);
CREATE INDEX verdict_by_unit ON verdict (unit);
