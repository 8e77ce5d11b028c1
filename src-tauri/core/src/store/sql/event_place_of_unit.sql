SELECT coalesce(max(seq), 0) FROM event WHERE unit = ?1 AND inspection IS NOT NULL
