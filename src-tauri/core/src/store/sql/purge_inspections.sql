DELETE FROM inspection WHERE unit = ?1
