SELECT id FROM unit WHERE deleted = 1
