SELECT 1 FROM queue WHERE place = ?1
