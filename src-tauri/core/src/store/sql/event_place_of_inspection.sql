SELECT coalesce(max(seq), 0) FROM event WHERE unit = ?1 AND inspection = ?2
