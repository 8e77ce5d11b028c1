SELECT words, facets FROM unit_text WHERE rowid = ?1
