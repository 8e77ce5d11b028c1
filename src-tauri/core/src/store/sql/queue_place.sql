SELECT place FROM queue WHERE unit = ?1
