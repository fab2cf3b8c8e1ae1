using ClassKit.Content.Diagnostics;
using ClassKit.Grading.Results;
using ClassKit.Wording.Counts;
using ClassKit.Wording.Files;
using ClassKit.Wording.Quoting;

namespace ClassKit.UseCases.Grading;

/// <summary>What an instructor should know of a grading at a glance, one sentence each.</summary>
public static class GradeNotes
{
    /// <summary>The sentences, the most important first.</summary>
    public static IReadOnlyList<string> Of(GradeResult graded)
    {
        ArgumentNullException.ThrowIfNull(graded);
        var (grades, summary) = (graded.Grades, graded.Summary);
        int With(GradeStatus status) => grades.Students.Count(student => student.Status == status);
        List<string> notes =
        [
            .. OtherDealWords.Mostly(grades) is { } mostly ? [mostly] : (IEnumerable<string>)[],
            $"{With(GradeStatus.Graded)} of {Counted.Of(grades.Students.Count, "student")} graded, {With(GradeStatus.Missing)} missing, {With(GradeStatus.Unreadable)} unreadable; {Others(grades)}.",
        ];
        notes.AddRange(grades.Files.Where(file => file.Fault is not null).Select(file =>
            $"{ShownName.Of(file.File)} could not be judged, by a mistake of ours: look at it yourself, and please report “{file.Fault}”. It counts neither for nor against anyone."));
        var corrected = grades.Students.SelectMany(student => student.Answers).Count(answer => answer.Correction is not null);
        if (corrected > 0) notes.Add($"{Counted.Of(corrected, "answer has", "answers have")} the points of your corrections.");
        notes.AddRange(TypedPointsWords.Of(grades));
        var flagged = grades.Students.Count(student => student.Flags.Count > 0);
        if (flagged > 0) notes.Add($"{Counted.Of(flagged, "student has", "students have")} something to look at; the class report lists it.");
        if (summary.TeachAgain is [var first, ..])
            notes.Add($"Teach again first: {first.Exercise.Title}, “{first.Part.Ask}” ({first.Understood} of {first.Judged} show the method).");
        return [.. notes, .. DeadlineWords.Of(graded.Deadline), .. JudgeWords.Again(graded)];
    }

    /// <summary>What the instructor may want to do about it.</summary>
    public static IReadOnlyList<Remedy> Remedies(GradeResult graded)
    {
        ArgumentNullException.ThrowIfNull(graded);
        return [.. TypedPointsWords.Remedies(graded.Grades), .. DeadlineWords.Remedies(graded.Deadline)];
    }

    private static string Others(ClassGrades grades)
    {
        var leftovers = grades.Files.Count(file => file.Fate == FileFate.Leftover);
        return $"{grades.Unmatched.Count - leftovers} other files accounted for" + (leftovers > 0 ? $", {leftovers} left behind by programs ignored" : "");
    }
}
