SELECT 1 FROM event WHERE id = ?1
