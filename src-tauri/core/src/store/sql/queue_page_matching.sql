SELECT rowid FROM unit_text WHERE unit_text MATCH ?4 AND rowid BETWEEN ?1 AND ?2 ORDER BY rowid LIMIT ?3
