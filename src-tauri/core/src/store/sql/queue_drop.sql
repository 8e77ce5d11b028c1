DELETE FROM queue WHERE place = ?1
