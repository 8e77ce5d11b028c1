DELETE FROM purge_permit WHERE unit = ?1
