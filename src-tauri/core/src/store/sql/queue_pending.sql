SELECT (SELECT count(*) FROM queue WHERE inspection IS NOT NULL AND engine_version IS NULL)
    + (SELECT count(*) FROM queue WHERE inspection IS NOT NULL AND engine_version < ?1)
    + (SELECT count(*) FROM queue WHERE inspection IS NOT NULL AND engine_version > ?1)
