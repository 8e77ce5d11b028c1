-- The queue's places tell units of one millisecond apart, and the index has a word for each answer that was
-- found. Both are worked out from the record, which is done when it is opened and finds them empty.
DELETE FROM queue;
DROP TABLE unit_text;

CREATE VIRTUAL TABLE unit_text USING fts5 (
    words,
    facets,
    tokenize = 'unicode61 remove_diacritics 2',
    prefix = '2 3'
);

-- What is deleted is taken out of the index, not only marked: it may be somebody's name.
INSERT INTO unit_text (unit_text, rank) VALUES ('secure-delete', 1);

-- With the inspection in it, how many classes are still to be worked out is counted in the index alone.
DROP INDEX queue_by_engine;
CREATE INDEX queue_by_engine ON queue (engine_version, place, inspection) WHERE inspection IS NOT NULL;
