SELECT 1 FROM unit WHERE id = ?1 AND demo = 1
