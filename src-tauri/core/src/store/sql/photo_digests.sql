-- From the log, not from the projection: an undo can bring back a photo that was removed.
SELECT DISTINCT json_extract(change, '$.sha256')
FROM event
WHERE subject GLOB 'photo.*.added' AND json_type(change, '$.sha256') = 'text'
