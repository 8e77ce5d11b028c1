DELETE FROM inspection WHERE unit = ?1 AND id = ?2
