-- The index by itself: the log's own pages are not looked at. SQLite gives this name to what `UNIQUE` needs.
SELECT seq FROM event INDEXED BY sqlite_autoindex_event_1
