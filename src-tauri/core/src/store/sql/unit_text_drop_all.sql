DELETE FROM unit_text
