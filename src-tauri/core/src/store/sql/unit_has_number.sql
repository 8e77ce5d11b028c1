SELECT 1 FROM unit WHERE number = ?1
