-- What a class was called before: what was dealt, graded and measured under an earlier name is the same class's.
CREATE TABLE former_name (
  name TEXT PRIMARY KEY CHECK (name <> ''),
  class INTEGER NOT NULL REFERENCES class (id)
) STRICT;
