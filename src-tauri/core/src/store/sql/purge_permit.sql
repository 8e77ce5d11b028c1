INSERT INTO purge_permit (unit) VALUES (?1)
