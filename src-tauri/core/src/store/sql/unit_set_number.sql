UPDATE unit SET number = ?2 WHERE id = ?1
