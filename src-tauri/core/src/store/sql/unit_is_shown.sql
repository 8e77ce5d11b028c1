SELECT 1 FROM unit WHERE created_at IS NOT NULL AND deleted = 0 LIMIT 1
