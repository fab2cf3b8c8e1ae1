-- What each work of a frozen grade was worth then, so that a later change can say why.
CREATE TABLE frozen_work (
  frozen INTEGER NOT NULL REFERENCES frozen_grade (id),
  place INTEGER NOT NULL,
  title TEXT NOT NULL,
  standing TEXT NOT NULL,
  share TEXT CHECK (share <> ''),
  PRIMARY KEY (frozen, place)
) STRICT, WITHOUT ROWID;
