DELETE FROM finding WHERE unit = ?1 AND inspection = ?2 AND key = ?3
