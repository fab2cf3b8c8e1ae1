-- What is changed is logged by triggers of whoever writes (Changes/RowLog.cs): whoever only reads a record had to take in these first. Pages of erased students are made anew by what erases.
DROP TRIGGER student_changed;
DROP TRIGGER enrolment_ended;
DROP TRIGGER typed_mark_changed;
DROP TRIGGER typed_mark_taken_away;
DROP TRIGGER bench_mark_changed;
DROP TRIGGER bench_mark_taken_away;
DROP TRIGGER observation_changed;
DROP TRIGGER graded_is_nobodys;
DROP TRIGGER work_changed;
DROP TRIGGER work_deal_changed;
DROP TRIGGER term_changed;
DROP TRIGGER class_changed;
DROP TRIGGER lesson_given_changed;
DROP TRIGGER arrangement_changed;
DROP TRIGGER bench_sheet_changed;
DROP TRIGGER bench_criterion_taken_away;
DROP TRIGGER bench_level_taken_away;
DROP TRIGGER work_deal_taken_away;

-- The level that each criterion reached is a row of its own; NULL where it was not asked.
CREATE TABLE bench_mark_level (
  mark INTEGER NOT NULL REFERENCES bench_mark (id) ON DELETE CASCADE,
  criterion INTEGER NOT NULL,
  work INTEGER NOT NULL,
  level INTEGER,
  PRIMARY KEY (mark, criterion),
  FOREIGN KEY (work, criterion) REFERENCES bench_criterion (work, place),
  FOREIGN KEY (work, level) REFERENCES bench_level (work, place)
) STRICT, WITHOUT ROWID;
INSERT INTO bench_mark_level (mark, criterion, work, level)
SELECT bench_mark.id, each.key, bench_sheet.work, nullif(each.value, -1)
FROM bench_mark JOIN bench_sheet ON bench_sheet.id = bench_mark.sheet, json_each('[' || replace(bench_mark.levels, ' ', ',') || ']') AS each;
ALTER TABLE bench_mark DROP COLUMN levels;
