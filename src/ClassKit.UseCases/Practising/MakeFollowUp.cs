using ClassKit.Content;
using ClassKit.Exercises;
using ClassKit.Grading;
using ClassKit.Pages;

namespace ClassKit.UseCases;

/// <summary>Makes each student practice aimed at what they missed: a page that checks itself, and a workbook with the same numbers.</summary>
public static class MakeFollowUp
{
    /// <summary>The command, and the kind of its output folder.</summary>
    public const string Kind = "follow-up";

    /// <summary>How long it takes when nothing is said.</summary>
    public const int DefaultMinutes = 30;

    /// <summary>Reads what was dealt and how it was graded, and makes everything.</summary>
    /// <param name="dealtFolder">The folder that `classkit deal` made.</param>
    /// <param name="gradedFolder">The folder that `classkit grade` made of it.</param>
    /// <param name="poolFolder">A lesson or a folder of exercises to draw from besides those dealt; null for none.</param>
    /// <param name="wish">For whom, and how much.</param>
    /// <param name="into">The output folder: practice that it holds is never replaced by other practice. Null for a new one.</param>
    public static Produced Make(string dealtFolder, string gradedFolder, string? poolFolder, FollowUpWish wish, string? into = null)
    {
        ArgumentNullException.ThrowIfNull(wish);
        var dealt = DealtFolder.Read(dealtFolder);
        var grades = GradedFolder.Read(gradedFolder);
        var pool = poolFolder is null ? null : PracticeSet.Read(poolFolder, SetWish.None, wish.Seed);
        if (!dealt.Succeeded || !grades.Succeeded || pool is { Succeeded: false })
            return Produced.Nothing([.. dealt.Problems, .. grades.Problems, .. pool?.Problems ?? []]);
        List<string> ids = [.. dealt.Model.Students.Select(student => student.Student.Id)];
        if (wish.Students.Except(ids).ToList() is { Count: > 0 } strangers)
            return Produced.Nothing([.. strangers.Select(id => new Diagnostic(dealtFolder, null, $"Nobody in {ClassName.InSentence(dealt.Model.Cohort)} has the id `{id}`", ExerciseBank.Advice(id, ids)))]);
        var earlier = EarlierDeal.In(into);
        return earlier.Succeeded ? Make(dealt.Model, grades.Model, pool?.Model!.Exercises ?? [], wish, dealtFolder, earlier.Model) : Produced.Nothing(earlier.Problems);
    }

    private static Produced Make(DealtClass before, EarlierGrades grades, IReadOnlyList<Exercise> pool, FollowUpWish wish, string folder, EarlierDeal earlier)
    {
        var records = grades.Students.ToDictionary(record => record.Id);
        var wanted = before.Students.Where(student => wish.Students.Count == 0 || wish.Students.Contains(student.Student.Id)).Select(student => student.Student).ToList();
        var chosen = wanted.ToDictionary(student => student.Id, student => records.TryGetValue(student.Id, out var record) ? FollowUpChooser.Choose(before, record, pool, wish.Minutes) : []);
        var practising = wanted.FindAll(student => chosen[student.Id].Count > 0);
        if (practising.Count == 0)
            return Produced.Nothing(new Diagnostic(folder, null, "Nobody lost a point on work that came back", "There is nothing to follow up; `classkit practice` makes practice of any kind."));

        var used = chosen.Values.SelectMany(list => list).Select(one => one.Exercise.Id).ToHashSet();
        var exercises = pool.UnionBy(before.Exercises, exercise => exercise.Id).Where(exercise => used.Contains(exercise.Id)).OrderBy(exercise => exercise.Skill, StringComparer.Ordinal).ThenBy(exercise => exercise.Level).ToList();
        if (PracticeLayout.FirstNameClash(exercises) is { } clash) return Produced.Nothing(PracticeSet.Clash(folder, clash));
        var result = Dealer.Deal(
            $"{before.Lesson}-follow-up", FollowUpTitle.Of(before.LessonTitle), exercises, before.Marking, new(before.Cohort, practising) { TimeZone = before.TimeZone }, wish.Seed,
            new(DealPurpose.FollowUp, NumbersToAvoid.OfEach(before)) { Choice = $"after {before.Identity?.Digest}", Sets = practising.ToDictionary(student => student.Id, student => (IReadOnlyList<string>)[.. chosen[student.Id].Select(one => one.Exercise.Id)]) });
        if (result.Class is not { } dealt)
            return Produced.Nothing(PracticeSet.Undealt(folder, result));
        if (earlier.RefusalOf(dealt) is { } refusal) return Produced.Nothing(refusal);
        return new(
            [
                OutputFile.OfText("follow-up.html", () => HtmlPages.FollowUp(dealt, chosen)),
                .. dealt.Students.Select(student => OutputFile.OfText($"pages/{student.Student.Id}.html", () => HtmlPages.SelfCheck(dealt, student))),
                .. DealPractice.FilesOf(dealt),
            ],
            Notes(wanted, practising, records, wish), []);
    }

    private static List<string> Notes(List<Student> wanted, List<Student> practising, Dictionary<string, EarlierGrades.Student> records, FollowUpWish wish)
    {
        List<string> notes = [$"{practising.Count} students practise what they missed, up to {wish.Minutes} minutes each, seed {wish.Seed}. Every page has a workbook with the same numbers, which can be graded like any other."];
        var idle = wanted.Except(practising).ToLookup(student => records.TryGetValue(student.Id, out var record) && record.Answers.Count > 0);
        if (idle[true].Any()) notes.Add($"Nothing was missed by {Names(idle[true])}.");
        if (idle[false].Any()) notes.Add($"Nothing is known of {Names(idle[false])}, of whom nothing was graded.");
        return notes;
    }

    private static string Names(IEnumerable<Student> students) => string.Join(", ", students.Select(student => student.Shown));
}
