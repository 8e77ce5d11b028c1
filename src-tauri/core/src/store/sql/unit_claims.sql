SELECT id, number, claim, claim_at, claim_event, demo FROM unit
