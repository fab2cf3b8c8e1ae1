-- The wrong formula near the key that an answer behaved like, where no misconception was met: over the exercise's names, so that it is the same for everybody. Gradings from before have it in their entries alone.
ALTER TABLE answer ADD COLUMN near_miss TEXT CHECK (near_miss <> '');
