SELECT key, value FROM finding WHERE unit = ?1
