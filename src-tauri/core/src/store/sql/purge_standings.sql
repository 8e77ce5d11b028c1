DELETE FROM standing WHERE unit = ?1
