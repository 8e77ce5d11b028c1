DELETE FROM photo WHERE unit = ?1 AND inspection = ?2 AND id = ?3
