SELECT id, claim, claim_at, claim_event, demo FROM unit WHERE id = ?1
