SELECT seq FROM sqlite_sequence WHERE name = 'event'
