-- A class's page is a row a grading: to step through a row for each student costs more than all else. Between students stands ';', between what is said of one '|'; no id, word or number of ours has them.
CREATE TABLE class_page (
  grading INTEGER PRIMARY KEY REFERENCES grading (id),
  students TEXT NOT NULL
) STRICT;
INSERT INTO class_page (grading, students)
SELECT grading, group_concat(concat(student, '|', status, '|', points, '|', out_of), ';' ORDER BY place) FROM graded GROUP BY grading;

-- Who is erased goes from there too.
CREATE TRIGGER graded_is_nobodys AFTER UPDATE OF student ON graded BEGIN
  UPDATE class_page SET students = (SELECT group_concat(concat(student, '|', status, '|', points, '|', out_of), ';' ORDER BY place) FROM graded WHERE grading = new.grading) WHERE grading = new.grading;
END;

-- The identity of the deal that a deal is sat again for; NULL for a first sitting.
ALTER TABLE deal ADD COLUMN replaces TEXT CHECK (replaces <> '');
