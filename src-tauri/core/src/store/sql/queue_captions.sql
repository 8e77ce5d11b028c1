SELECT caption FROM photo WHERE unit = ?1 AND caption <> ''
