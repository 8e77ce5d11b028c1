DELETE FROM verdict WHERE unit = ?1
