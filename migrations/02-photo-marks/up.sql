-- What is drawn on a photo, the photo of before that it belongs to, and what its pixels hint at. The table is
-- worked out from the log, so what stands in it already gains these when its rows are refreshed.
ALTER TABLE photo ADD COLUMN marks TEXT NOT NULL DEFAULT '[]' CHECK (json_valid(marks));
ALTER TABLE photo ADD COLUMN before TEXT;
ALTER TABLE photo ADD COLUMN hints TEXT NOT NULL DEFAULT '[]' CHECK (json_valid(hints));
