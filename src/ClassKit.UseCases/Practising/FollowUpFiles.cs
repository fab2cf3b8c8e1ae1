using ClassKit.Notes;
using ClassKit.Pages;
using ClassKit.UseCases.Dealing;
using ClassKit.UseCases.Output;

namespace ClassKit.UseCases.Practising;

/// <summary>
/// The files of practice after grading: a page a student that checks itself, a workbook with the same numbers, and who practises what and
/// why.
/// </summary>
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
            .. dealt.Students.Select(student =>
                OutputFile.OfText($"pages/{student.Who.Id}.html", () => HtmlPages.SelfCheck(dealt, student))
            ),
            .. DealFiles.Of(dealt),
        ];
    }

    /// <summary>What an instructor should know of them.</summary>
    public static IReadOnlyList<Note> Notes(FollowUpMade made)
    {
        ArgumentNullException.ThrowIfNull(made);
        var (request, wish) = (made.Request, made.Request.Wish);
        List<Note> notes = [new Note.FollowingUp(made.Dealt.Students.Count, wish.Minutes, wish.Seed)];
        var graded = request.Grades.Students.Where(record => record.HasPoints).Select(record => record.Who.Id).ToHashSet();
        var idle = request
            .Before.Students.Select(student => student.Who)
            .Where(student => made.Chosen.TryGetValue(student.Id, out var chosen) && chosen.Count == 0)
            .ToLookup(student => graded.Contains(student.Id));
        if (idle[true].Any())
            notes.Add(new Note.NothingMissed([.. idle[true]]));
        if (idle[false].Any())
            notes.Add(new Note.NothingGraded([.. idle[false]]));
        return notes;
    }
}
