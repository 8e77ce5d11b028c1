SELECT state, class, count(*) FROM queue GROUP BY state, class
