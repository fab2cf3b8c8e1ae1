-- Of a calculation set of which nothing has been graded nobody knows the points: until now 1 stood for them, and went out as a work of one point.
ALTER TABLE work ADD COLUMN possible TEXT CHECK (possible <> '');
UPDATE work SET possible = out_of WHERE kind <> 'CalculationSet' OR out_of <> '1' OR EXISTS (
  SELECT 1 FROM work_deal JOIN grading ON grading.deal = work_deal.deal JOIN graded ON graded.grading = grading.id WHERE work_deal.work = work.id AND graded.out_of = '1');
ALTER TABLE work DROP COLUMN out_of;
ALTER TABLE work RENAME COLUMN possible TO out_of;
