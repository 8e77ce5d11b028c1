SELECT count(*) FROM inspection WHERE started_at IS NOT NULL
