INSERT INTO unit_text (rowid, words, facets) VALUES (?1, ?2, ?3)
