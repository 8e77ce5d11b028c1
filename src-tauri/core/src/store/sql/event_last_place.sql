SELECT coalesce(max(seq), 0) FROM event
