-- What a work is worth, when it was due, which deal was sat for it and who marked it decide grades as marks do: what was there before stays on record as well.
CREATE TRIGGER work_changed AFTER UPDATE ON work WHEN (old.title, old.kind, old.category, old.out_of, old.assigned, old.due) IS NOT (new.title, new.kind, new.category, new.out_of, new.assigned, new.due) BEGIN
  INSERT INTO changed_row (change, of_table, before, after)
  VALUES ((SELECT max(id) FROM change), 'work', concat_ws(' ', old.title, old.kind, old.category, old.out_of, old.assigned, old.due), concat_ws(' ', new.title, new.kind, new.category, new.out_of, new.assigned, new.due));
END;
CREATE TRIGGER work_deal_changed AFTER UPDATE ON work_deal WHEN old.deal <> new.deal BEGIN
  INSERT INTO changed_row (change, of_table, before, after)
  SELECT (SELECT max(id) FROM change), 'work_deal', concat_ws(' ', work.title, old.sitting, was.code), concat_ws(' ', work.title, new.sitting, becomes.code)
  FROM work, deal AS was, deal AS becomes WHERE work.id = new.work AND was.id = old.deal AND becomes.id = new.deal;
END;
CREATE TRIGGER term_changed AFTER UPDATE ON term WHEN (old.title, old.begins, old.ends) IS NOT (new.title, new.begins, new.ends) BEGIN
  INSERT INTO changed_row (change, of_table, before, after)
  VALUES ((SELECT max(id) FROM change), 'term', concat_ws(' ', old.title, old.begins, old.ends), concat_ws(' ', new.title, new.begins, new.ends));
END;
CREATE TRIGGER class_changed AFTER UPDATE ON class WHEN old.name <> new.name BEGIN
  INSERT INTO changed_row (change, of_table, before, after) VALUES ((SELECT max(id) FROM change), 'class', old.name, new.name);
END;
CREATE TRIGGER lesson_given_changed AFTER UPDATE ON lesson_given WHEN (old.title, old.day) IS NOT (new.title, new.day) BEGIN
  INSERT INTO changed_row (change, of_table, before, after) VALUES ((SELECT max(id) FROM change), 'lesson_given', concat_ws(' ', old.lesson, old.day, old.title), concat_ws(' ', new.lesson, new.day, new.title));
END;
CREATE TRIGGER arrangement_changed AFTER UPDATE ON arrangement WHEN (old.what, old.until) IS NOT (new.what, new.until) BEGIN
  INSERT INTO changed_row (change, of_table, student, before, after)
  VALUES ((SELECT max(id) FROM change), 'arrangement', new.student, concat_ws(' ', old.what, coalesce(old.until, 'open')), concat_ws(' ', new.what, coalesce(new.until, 'open')));
END;
CREATE TRIGGER bench_sheet_changed AFTER UPDATE ON bench_sheet WHEN old.marker <> new.marker BEGIN
  INSERT INTO changed_row (change, of_table, before, after)
  SELECT (SELECT max(id) FROM change), 'bench_sheet', concat_ws(' ', title, old.sitting, old.place, old.marker), concat_ws(' ', title, new.sitting, new.place, new.marker) FROM work WHERE id = new.work;
END;
CREATE TRIGGER bench_criterion_taken_away AFTER DELETE ON bench_criterion BEGIN
  INSERT INTO changed_row (change, of_table, before) SELECT (SELECT max(id) FROM change), 'bench_criterion', concat_ws(' ', title, old.place, old.name, old.weight) FROM work WHERE id = old.work;
END;
CREATE TRIGGER bench_level_taken_away AFTER DELETE ON bench_level BEGIN
  INSERT INTO changed_row (change, of_table, before) SELECT (SELECT max(id) FROM change), 'bench_level', concat_ws(' ', title, old.place, old.name, old.points) FROM work WHERE id = old.work;
END;
CREATE TRIGGER work_deal_taken_away AFTER DELETE ON work_deal BEGIN
  INSERT INTO changed_row (change, of_table, before)
  SELECT (SELECT max(id) FROM change), 'work_deal', concat_ws(' ', work.title, old.sitting, deal.code) FROM work, deal WHERE work.id = old.work AND deal.id = old.deal;
END;
