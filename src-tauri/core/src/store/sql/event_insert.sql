INSERT INTO event
    (id, device, author, at, unit, inspection, subject, change, supersedes, intent, undoes, restores, demo)
VALUES (?1, ?2, ?3, ?4, ?5, ?6, ?7, ?8, ?9, ?10, ?11, ?12, ?13)
ON CONFLICT (id) DO NOTHING
