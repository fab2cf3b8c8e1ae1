-- The first shape of the record.
-- Points are decimals as text, never REAL. Days are 2026-11-29, moments are 2026-11-29T13:24:00.0000000+00:00. A text that may be absent is NULL and never
-- empty, so that tables written out tell the two apart. Whatever belongs to a student and is part of a class's statistics stays without them when they are erased.

-- Who changed what, when and why: every transaction begins with a row here.
CREATE TABLE change (
  id INTEGER PRIMARY KEY,
  at TEXT NOT NULL,
  who TEXT NOT NULL,
  what TEXT NOT NULL,
  about TEXT NOT NULL,
  why TEXT NOT NULL
) STRICT;

CREATE TABLE class (
  id INTEGER PRIMARY KEY,
  name TEXT NOT NULL UNIQUE CHECK (name <> '')
) STRICT;

CREATE TABLE student (
  id TEXT PRIMARY KEY CHECK (id <> ''),
  name TEXT NOT NULL,
  email TEXT CHECK (email <> '')
) STRICT;

CREATE TABLE enrolment (
  class INTEGER NOT NULL REFERENCES class (id),
  student TEXT NOT NULL REFERENCES student (id) ON DELETE CASCADE ON UPDATE CASCADE,
  since TEXT NOT NULL,
  until TEXT CHECK (until >= since),
  PRIMARY KEY (class, student, since)
) STRICT, WITHOUT ROWID;
CREATE INDEX enrolment_of_student ON enrolment (student);

CREATE TABLE lesson_given (
  id INTEGER PRIMARY KEY,
  class INTEGER NOT NULL REFERENCES class (id),
  lesson TEXT NOT NULL,
  title TEXT NOT NULL,
  day TEXT NOT NULL,
  UNIQUE (class, lesson, day)
) STRICT;

-- What one row was before it was changed or taken away. What is new needs none: its change says when it came.
CREATE TABLE changed_row (
  id INTEGER PRIMARY KEY,
  change INTEGER NOT NULL REFERENCES change (id),
  of_table TEXT NOT NULL,
  student TEXT REFERENCES student (id) ON DELETE CASCADE ON UPDATE CASCADE,
  before TEXT NOT NULL,
  after TEXT CHECK (after <> '')
) STRICT;
CREATE INDEX changed_row_of_change ON changed_row (change);
CREATE INDEX changed_row_of_student ON changed_row (student);

-- Deals, as dealt.json has them; frozen holds all but the students.
CREATE TABLE deal (
  id INTEGER PRIMARY KEY,
  digest TEXT NOT NULL UNIQUE,
  code TEXT NOT NULL,
  class INTEGER NOT NULL REFERENCES class (id),
  lesson TEXT NOT NULL,
  title TEXT NOT NULL,
  frozen BLOB NOT NULL,
  change INTEGER NOT NULL REFERENCES change (id)
) STRICT;
CREATE INDEX deal_of_class ON deal (class);

CREATE TABLE deal_part (
  deal INTEGER NOT NULL REFERENCES deal (id),
  place INTEGER NOT NULL,
  exercise TEXT NOT NULL,
  part TEXT NOT NULL,
  skill TEXT NOT NULL,
  PRIMARY KEY (deal, place)
) STRICT, WITHOUT ROWID;

CREATE TABLE deal_seat (
  deal INTEGER NOT NULL REFERENCES deal (id),
  place INTEGER NOT NULL,
  student TEXT NOT NULL REFERENCES student (id) ON DELETE CASCADE ON UPDATE CASCADE,
  entry BLOB NOT NULL,
  PRIMARY KEY (deal, place)
) STRICT;
CREATE INDEX deal_seat_of_student ON deal_seat (student);

-- Gradings, as grades.json has them; frame holds what is neither of a student nor of the deal.
CREATE TABLE grading (
  id INTEGER PRIMARY KEY,
  deal INTEGER NOT NULL REFERENCES deal (id),
  number INTEGER NOT NULL CHECK (number > 0),
  digest TEXT NOT NULL,
  judge_version INTEGER,
  program TEXT NOT NULL,
  frame BLOB NOT NULL,
  change INTEGER NOT NULL REFERENCES change (id),
  UNIQUE (deal, number)
) STRICT;

CREATE TABLE graded (
  id INTEGER PRIMARY KEY,
  grading INTEGER NOT NULL REFERENCES grading (id),
  place INTEGER NOT NULL,
  student TEXT REFERENCES student (id) ON DELETE SET NULL ON UPDATE CASCADE,
  status TEXT NOT NULL,
  points TEXT CHECK (points <> ''),
  out_of TEXT CHECK (out_of <> ''),
  late_days INTEGER,
  late_off TEXT CHECK (late_off <> ''),
  entry BLOB,
  UNIQUE (grading, place)
) STRICT;
CREATE INDEX graded_of_student ON graded (student);

CREATE TABLE answer (
  graded INTEGER NOT NULL REFERENCES graded (id),
  place INTEGER NOT NULL,
  outcome TEXT NOT NULL,
  points TEXT NOT NULL,
  out_of TEXT NOT NULL,
  misconception TEXT CHECK (misconception <> ''),
  PRIMARY KEY (graded, place)
) STRICT, WITHOUT ROWID;

CREATE TABLE correction (
  graded INTEGER NOT NULL REFERENCES graded (id),
  place INTEGER NOT NULL,
  as_graded TEXT NOT NULL,
  points TEXT NOT NULL,
  reason TEXT CHECK (reason <> ''),
  PRIMARY KEY (graded, place)
) STRICT, WITHOUT ROWID;

CREATE TABLE returned_file (
  grading INTEGER NOT NULL REFERENCES grading (id),
  place INTEGER NOT NULL,
  student TEXT REFERENCES student (id) ON DELETE CASCADE ON UPDATE CASCADE,
  sha256 TEXT CHECK (sha256 <> ''),
  entry BLOB NOT NULL,
  PRIMARY KEY (grading, place)
) STRICT;
CREATE INDEX returned_file_of_student ON returned_file (student);

CREATE TABLE gradebook_point (
  grading INTEGER NOT NULL REFERENCES grading (id),
  place INTEGER NOT NULL,
  student TEXT NOT NULL REFERENCES student (id) ON DELETE CASCADE ON UPDATE CASCADE,
  entry BLOB NOT NULL,
  PRIMARY KEY (grading, place)
) STRICT;
CREATE INDEX gradebook_point_of_student ON gradebook_point (student);

-- A term of a class: what it was set, and what came of it.
CREATE TABLE term (
  id INTEGER PRIMARY KEY,
  class INTEGER NOT NULL REFERENCES class (id),
  title TEXT NOT NULL CHECK (title <> ''),
  begins TEXT,
  ends TEXT CHECK (ends >= begins),
  UNIQUE (class, title)
) STRICT;

CREATE TABLE work (
  id INTEGER PRIMARY KEY,
  term INTEGER NOT NULL REFERENCES term (id),
  place INTEGER NOT NULL,
  title TEXT NOT NULL CHECK (title <> ''),
  kind TEXT NOT NULL,
  category TEXT NOT NULL,
  out_of TEXT NOT NULL,
  assigned TEXT,
  due TEXT,
  UNIQUE (term, title)
) STRICT;

-- Which deal was sat; a resit is a deal of its own.
CREATE TABLE work_deal (
  work INTEGER NOT NULL REFERENCES work (id),
  sitting INTEGER NOT NULL CHECK (sitting > 0),
  deal INTEGER NOT NULL REFERENCES deal (id),
  PRIMARY KEY (work, sitting)
) STRICT, WITHOUT ROWID;
CREATE INDEX work_deal_of_deal ON work_deal (deal);

CREATE TABLE typed_mark (
  id INTEGER PRIMARY KEY,
  work INTEGER NOT NULL REFERENCES work (id),
  sitting INTEGER NOT NULL CHECK (sitting > 0),
  student TEXT REFERENCES student (id) ON DELETE SET NULL ON UPDATE CASCADE,
  state TEXT NOT NULL,
  points TEXT CHECK (points <> ''),
  out_of TEXT CHECK (out_of <> ''),
  lateness TEXT NOT NULL,
  change INTEGER NOT NULL REFERENCES change (id),
  UNIQUE (work, sitting, student)
) STRICT;
CREATE INDEX typed_mark_of_student ON typed_mark (student);

-- Work at the bench: what a rubric measures with, who marked, and the level that each criterion reached.
CREATE TABLE bench_criterion (
  work INTEGER NOT NULL REFERENCES work (id),
  place INTEGER NOT NULL,
  name TEXT NOT NULL,
  weight TEXT NOT NULL,
  PRIMARY KEY (work, place)
) STRICT, WITHOUT ROWID;

CREATE TABLE bench_level (
  work INTEGER NOT NULL REFERENCES work (id),
  place INTEGER NOT NULL,
  name TEXT NOT NULL,
  points TEXT NOT NULL,
  PRIMARY KEY (work, place)
) STRICT, WITHOUT ROWID;

CREATE TABLE bench_sheet (
  id INTEGER PRIMARY KEY,
  work INTEGER NOT NULL REFERENCES work (id),
  sitting INTEGER NOT NULL CHECK (sitting > 0),
  place INTEGER NOT NULL CHECK (place IN (1, 2)),
  marker TEXT NOT NULL,
  change INTEGER NOT NULL REFERENCES change (id),
  UNIQUE (work, sitting, place)
) STRICT;

CREATE TABLE bench_mark (
  id INTEGER PRIMARY KEY,
  sheet INTEGER NOT NULL REFERENCES bench_sheet (id),
  student TEXT REFERENCES student (id) ON DELETE SET NULL ON UPDATE CASCADE,
  levels TEXT NOT NULL,
  comment TEXT CHECK (comment <> ''),
  change INTEGER NOT NULL REFERENCES change (id),
  UNIQUE (sheet, student)
) STRICT;
CREATE INDEX bench_mark_of_student ON bench_mark (student);

-- Something measured of a bread of a team; students are in no observation.
CREATE TABLE observation (
  id INTEGER PRIMARY KEY,
  lesson_given INTEGER NOT NULL REFERENCES lesson_given (id),
  team TEXT NOT NULL,
  bread TEXT NOT NULL,
  measured TEXT NOT NULL,
  unit TEXT NOT NULL,
  value TEXT NOT NULL,
  remark TEXT CHECK (remark <> ''),
  change INTEGER NOT NULL REFERENCES change (id),
  UNIQUE (lesson_given, team, bread, measured)
) STRICT;

-- What one student was promised otherwise, from a day on; why stands nowhere.
CREATE TABLE arrangement (
  id INTEGER PRIMARY KEY,
  class INTEGER NOT NULL REFERENCES class (id),
  student TEXT NOT NULL REFERENCES student (id) ON DELETE CASCADE ON UPDATE CASCADE,
  since TEXT NOT NULL,
  until TEXT CHECK (until >= since),
  what TEXT NOT NULL,
  change INTEGER NOT NULL REFERENCES change (id)
) STRICT;
CREATE INDEX arrangement_of_student ON arrangement (student);

-- Grades that were given out. A later change is a row of its own; the highest number stands.
CREATE TABLE frozen_grade (
  id INTEGER PRIMARY KEY,
  term INTEGER NOT NULL REFERENCES term (id),
  number INTEGER NOT NULL CHECK (number > 0),
  student TEXT REFERENCES student (id) ON DELETE SET NULL ON UPDATE CASCADE,
  grade TEXT CHECK (grade <> ''),
  percent TEXT CHECK (percent <> ''),
  rounded TEXT CHECK (rounded <> ''),
  provisional INTEGER NOT NULL CHECK (provisional IN (0, 1)),
  change INTEGER NOT NULL REFERENCES change (id),
  UNIQUE (term, number, student)
) STRICT;
CREATE INDEX frozen_grade_of_student ON frozen_grade (student);

-- What was there before stays on record, unless a student is erased: then nothing of them may.
CREATE TRIGGER student_changed AFTER UPDATE ON student WHEN old.name <> new.name OR old.email IS NOT new.email BEGIN
  INSERT INTO changed_row (change, of_table, student, before, after)
  VALUES ((SELECT max(id) FROM change), 'student', new.id, concat_ws(' ', old.name, old.email), concat_ws(' ', new.name, new.email));
END;
CREATE TRIGGER enrolment_ended AFTER UPDATE ON enrolment WHEN old.until IS NOT new.until BEGIN
  INSERT INTO changed_row (change, of_table, student, before, after)
  VALUES ((SELECT max(id) FROM change), 'enrolment', new.student, coalesce(old.until, 'open'), coalesce(new.until, 'open'));
END;
CREATE TRIGGER typed_mark_changed AFTER UPDATE ON typed_mark WHEN new.student IS NOT NULL BEGIN
  INSERT INTO changed_row (change, of_table, student, before, after)
  VALUES ((SELECT max(id) FROM change), 'typed_mark', new.student, concat_ws(' ', old.work, old.sitting, old.state, old.points, old.lateness), concat_ws(' ', new.work, new.sitting, new.state, new.points, new.lateness));
END;
CREATE TRIGGER typed_mark_taken_away AFTER DELETE ON typed_mark WHEN old.student IS NOT NULL BEGIN
  INSERT INTO changed_row (change, of_table, student, before)
  VALUES ((SELECT max(id) FROM change), 'typed_mark', old.student, concat_ws(' ', old.work, old.sitting, old.state, old.points, old.lateness));
END;
CREATE TRIGGER bench_mark_changed AFTER UPDATE ON bench_mark WHEN new.student IS NOT NULL BEGIN
  INSERT INTO changed_row (change, of_table, student, before, after)
  VALUES ((SELECT max(id) FROM change), 'bench_mark', new.student, concat_ws(' ', old.sheet, old.levels, old.comment), concat_ws(' ', new.sheet, new.levels, new.comment));
END;
CREATE TRIGGER bench_mark_taken_away AFTER DELETE ON bench_mark WHEN old.student IS NOT NULL BEGIN
  INSERT INTO changed_row (change, of_table, student, before)
  VALUES ((SELECT max(id) FROM change), 'bench_mark', old.student, concat_ws(' ', old.sheet, old.levels, old.comment));
END;
CREATE TRIGGER observation_changed AFTER UPDATE ON observation BEGIN
  INSERT INTO changed_row (change, of_table, before, after)
  VALUES ((SELECT max(id) FROM change), 'observation', concat_ws(' ', old.team, old.bread, old.measured, old.value, old.unit, old.remark), concat_ws(' ', new.team, new.bread, new.measured, new.value, new.unit, new.remark));
END;
