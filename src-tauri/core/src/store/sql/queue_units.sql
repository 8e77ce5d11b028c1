SELECT id FROM unit WHERE created_at IS NOT NULL AND deleted = 0
