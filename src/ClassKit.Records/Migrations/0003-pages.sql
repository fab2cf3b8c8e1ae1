-- A page of a student or of a class is answered from these alone: rows themselves lie among packed entries.
CREATE INDEX graded_on_class_page ON graded (grading, place, student, status, points, out_of);
DROP INDEX graded_of_student;
CREATE INDEX graded_of_student ON graded (student, grading, status, points, out_of);
