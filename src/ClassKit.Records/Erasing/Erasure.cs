using ClassKit.Exercises.Cohorts;
using ClassKit.Records.Classes;
using ClassKit.Records.Gradings;
using ClassKit.Records.Storage;

namespace ClassKit.Records.Erasing;

/// <summary>
/// Takes a student out of the record. What is part of a class's statistics stays, and nothing in it says whose it was or which works were
/// one person's.
/// </summary>
public static class Erasure
{
    /// <summary>Tables whose rows go with the student, and those whose rows stay without them.</summary>
    private static readonly string[] Going = ["enrolment", "deal_seat", "returned_file", "gradebook_point", "arrangement", "changed_row"],
        Staying = ["graded", "typed_mark", "bench_mark", "frozen_grade"];

    /// <summary>Erases a student.</summary>
    /// <param name="session">Writes.</param>
    /// <param name="id">The student's id.</param>
    /// <param name="without">An entry of somebody else's or of a file without mentions of the student: the same text where there are none,
    /// null where nothing should stay.</param>
    /// <returns>Null if the record knows nobody of that id.</returns>
    public static Erased? Erase(WritingSession session, string id, Func<string, Student, string?> without)
    {
        ArgumentNullException.ThrowIfNull(session);
        ArgumentNullException.ThrowIfNull(without);
        if (ClassRegister.FindStudent(session, id) is not { } student)
            return null;
        var classes = ClassRegister.OfStudent(session, id).Select(one => one.Class.Name).Distinct().ToList();
        var (removed, kept) = (Going.Sum(table => Count(session, table, id)), Staying.Sum(table => Count(session, table, id)));
        var mentions = Mentions(session, "graded", student, without) + Mentions(session, "returned_file", student, without);
        session.Run("UPDATE correction SET reason = NULL WHERE graded IN (SELECT id FROM graded WHERE student = $1)", id);
        var gradings = session.Query("SELECT grading FROM graded WHERE student = $1", row => row.Number(0), id);
        session.Run("UPDATE graded SET student = NULL, entry = NULL WHERE student = $1", id);
        foreach (var grading in gradings)
            ClassPage.Put(session, grading);
        session.Run("UPDATE bench_mark SET student = NULL, comment = NULL WHERE student = $1", id);
        session.Run("DELETE FROM student WHERE id = $1", id);
        return new(student, classes, removed, kept, mentions);
    }

    private static int Count(RecordSession session, string table, string id) =>
        (int)session.Number($"SELECT count(*) FROM {table} WHERE student = $1", id)!;

    /// <summary>What others' entries of the same gradings say of the student.</summary>
    private static int Mentions(WritingSession session, string table, Student student, Func<string, Student, string?> without)
    {
        var entries = session.Query(
            $"SELECT rowid, entry FROM {table} WHERE grading IN (SELECT grading FROM graded WHERE student = $1) AND student IS NOT $1 AND entry IS NOT NULL",
            row => (Id: row.Number(0), Entry: row.Unpacked(1)),
            student.Id
        );
        var changed = 0;
        foreach (var (id, entry) in entries)
        {
            var left = without(entry, student);
            if (left == entry)
                continue;
            changed++;
            if (left is null)
                session.Run($"DELETE FROM {table} WHERE rowid = $1", id);
            else
                session.Run($"UPDATE {table} SET entry = $2 WHERE rowid = $1", id, Packed.Of(left));
        }
        return changed;
    }
}
