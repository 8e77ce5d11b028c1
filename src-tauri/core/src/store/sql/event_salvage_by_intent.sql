SELECT seq FROM event INDEXED BY event_by_intent
