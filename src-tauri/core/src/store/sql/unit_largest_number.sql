SELECT coalesce(max(number), 0) FROM unit
