DELETE FROM unit_text WHERE rowid = ?1
