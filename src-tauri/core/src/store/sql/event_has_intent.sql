SELECT 1 FROM event WHERE intent = ?1
