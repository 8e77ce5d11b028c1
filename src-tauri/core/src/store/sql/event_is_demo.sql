SELECT 1 FROM event WHERE unit = ?1 AND demo = 1
