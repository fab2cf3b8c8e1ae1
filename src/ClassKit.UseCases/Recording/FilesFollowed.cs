using ClassKit.Content.Terms;
using ClassKit.Records.Marks;
using ClassKit.Records.Storage;
using ClassKit.Records.Terms;

namespace ClassKit.UseCases.Recording;

/// <summary>
/// Marks on record that no file of a term has any more: whoever took one out of a table meant it, or the record would give out a grade that
/// nobody can find in the files.
/// </summary>
internal static class FilesFollowed
{
    /// <summary>
    /// Takes marks of a work off the record that its files have no longer, of students who are on the class list. The log keeps what they
    /// were.
    /// </summary>
    /// <returns>
    /// The work, how many were taken off, and how many stay because the files have none at all of this work: then it is the table that is
    /// missing, more likely than every mark in it.
    /// </returns>
    public static (string Work, int Taken, int Left) Of(
        WritingSession session,
        RecordedWork work,
        PlannedWork planned,
        IReadOnlySet<string> listed
    )
    {
        var typed = planned.Typed.Select(mark => (mark.Student, mark.Sitting)).ToHashSet();
        var seen = planned
            .Bench.Index()
            .SelectMany(sitting =>
                new[] { sitting.Item.First, sitting.Item.Second }
                    .Index()
                    .SelectMany(sheet =>
                        (sheet.Item?.Places.Keys.Union(sheet.Item.Comments.Keys) ?? []).Select(student =>
                            (sitting.Index + 1, sheet.Index + 1, student)
                        )
                    )
            )
            .ToHashSet();
        List<(string Student, int Sitting)> words =
        [
            .. TypedMarks
                .Of(session, work)
                .Select(mark => (mark.Student, mark.Sitting))
                .Where(mark => listed.Contains(mark.Student) && !typed.Contains(mark)),
        ];
        List<(int Sitting, int Marker, string Student)> levels =
        [
            .. BenchRegister.Marked(session, work).Where(mark => listed.Contains(mark.Student) && !seen.Contains(mark)),
        ];
        if (typed.Count + seen.Count == 0)
            return (planned.Title, 0, words.Count + levels.Count);
        foreach (var (student, sitting) in words)
            TypedMarks.TakeAway(session, work, student, sitting);
        foreach (var (sitting, marker, student) in levels)
            BenchRegister.TakeAway(session, work, sitting, marker, student);
        return (planned.Title, words.Count + levels.Count, 0);
    }
}
