using ClassKit.Exercises.Cohorts;
using ClassKit.Pages;
using ClassKit.UseCases.Dealing;
using ClassKit.UseCases.Output;
using ClassKit.Wording.Counts;

namespace ClassKit.UseCases.Practising;

/// <summary>The files of practice after grading: a page a student that checks itself, a workbook with the same numbers, and who practises what and why.</summary>
public static class FollowUpFiles
{
    /// <summary>What to open first.</summary>
    public const string Overview = "follow-up.html";

    /// <summary>Each made when it is written.</summary>
    public static IReadOnlyList<OutputFile> Of(FollowUpMade made)
    {
        ArgumentNullException.ThrowIfNull(made);
        var dealt = made.Dealt;
        return
        [
            OutputFile.OfText(Overview, () => HtmlPages.FollowUp(dealt, made.Chosen)),
            .. dealt.Students.Select(student => OutputFile.OfText($"pages/{student.Who.Id}.html", () => HtmlPages.SelfCheck(dealt, student))),
            .. DealFiles.Of(dealt),
        ];
    }

    /// <summary>What an instructor should know of them, one sentence each.</summary>
    public static IReadOnlyList<string> Notes(FollowUpMade made)
    {
        ArgumentNullException.ThrowIfNull(made);
        var (request, wish) = (made.Request, made.Request.Wish);
        List<string> notes = [$"{Counted.Of(made.Dealt.Students.Count, "student practises", "students practise")} what they missed, up to {wish.Minutes} minutes each, seed {wish.Seed}. Every page has a workbook with the same numbers, which can be graded like any other."];
        var graded = request.Grades.Students.Where(record => record.HasPoints).Select(record => record.Who.Id).ToHashSet();
        var idle = request.Before.Students.Select(student => student.Who).Where(student => made.Chosen.TryGetValue(student.Id, out var chosen) && chosen.Count == 0).ToLookup(student => graded.Contains(student.Id));
        if (idle[true].Any()) notes.Add($"Nothing was missed by {Names(idle[true])}.");
        if (idle[false].Any()) notes.Add($"Nothing is known of {Names(idle[false])}, of whom nothing was graded.");
        return notes;
    }

    private static string Names(IEnumerable<Student> students) => string.Join(", ", students.Select(student => student.Shown));
}
