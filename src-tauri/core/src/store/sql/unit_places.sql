-- Each place found from the one before it in the index: a shop has few places and many units.
WITH RECURSIVE known (place) AS (
    SELECT min(place) FROM unit WHERE place > '' AND created_at IS NOT NULL AND deleted = 0
    UNION ALL
    SELECT (SELECT min(place) FROM unit WHERE place > known.place AND created_at IS NOT NULL AND deleted = 0)
    FROM known
    WHERE known.place IS NOT NULL
)
SELECT place FROM known WHERE place IS NOT NULL
