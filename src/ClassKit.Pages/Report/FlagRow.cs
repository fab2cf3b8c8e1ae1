using ClassKit.Exercises.Authoring;
using ClassKit.Grading.Findings;
using ClassKit.Grading.Results;
using ClassKit.Wording.Flags;

namespace ClassKit.Pages.Report;

/// <summary>
/// A row of the facts to look at. What holds of several students alike is one fact and one row, not one for each side of each pair.
/// </summary>
/// <param name="Students">Whom it is about, in the order in which they were met.</param>
/// <param name="Flag">The fact as it was found of the first of them.</param>
public sealed record FlagRow(IReadOnlyList<string> Students, Flag Flag)
{
    /// <summary>The rows of a class.</summary>
    /// <param name="grades">Its grades.</param>
    public static IReadOnlyList<FlagRow> Of(ClassGrades grades)
    {
        ArgumentNullException.ThrowIfNull(grades);
        var rows = new List<FlagRow>();
        foreach (var (student, flag) in grades.Students.SelectMany(student => student.Flags.Select(flag => (student.Who.Shown, flag))))
        {
            List<string> about = [student, .. Others(flag)];
            var known = about.Count == 1 ? -1 : rows.FindIndex(row => IsSame(row.Flag, flag) && row.Students.Intersect(about).Any());
            if (known < 0)
                rows.Add(new(about, flag));
            else
                rows[known] = rows[known] with { Students = [.. rows[known].Students.Union(about)] };
        }
        return rows;
    }

    /// <summary>The fact in words.</summary>
    /// <param name="exercises">Those of the deal, in order.</param>
    public string Words(IReadOnlyList<Exercise> exercises) =>
        Students.Count == 1 ? FlagWords.Of(Flag, exercises) : FlagWords.OfAll(Flag, Students.Count, exercises);

    private static IEnumerable<string> Others(Flag flag) =>
        flag switch
        {
            Flag.SharedMistakes shared => [shared.Other.Shown],
            Flag.SharedAuthor shared => shared.Others.Select(other => other.Shown),
            _ => [],
        };

    private static bool IsSame(Flag one, Flag other) =>
        (one, other) switch
        {
            (Flag.SharedMistakes a, Flag.SharedMistakes b) => a.Parts.SequenceEqual(b.Parts),
            (Flag.SharedAuthor, Flag.SharedAuthor) => true,
            _ => false,
        };
}
