using ClassKit.Pages;
using ClassKit.UseCases.Output;

namespace ClassKit.UseCases.Practising;

/// <summary>The pages of practice, which check themselves.</summary>
public static class PracticeFiles
{
    /// <summary>The one page that is anyone's.</summary>
    public const string ForAnyone = "practice.html";

    /// <summary>Each made when it is written.</summary>
    public static IReadOnlyList<OutputFile> Of(PracticeMade practice)
    {
        ArgumentNullException.ThrowIfNull(practice);
        var (dealt, isForAnyone) = (practice.Dealt, practice.Request.Roster is null);
        return [.. dealt.Students.Select(student => OutputFile.OfText(isForAnyone ? ForAnyone : $"pages/{student.Who.Id}.html", () => HtmlPages.SelfCheck(dealt, student)))];
    }

    /// <summary>What an instructor should know of them, one sentence each.</summary>
    public static IReadOnlyList<string> Notes(PracticeMade practice)
    {
        ArgumentNullException.ThrowIfNull(practice);
        return
        [
            practice.Request.Set.Summary,
            $"{(practice.Request.Roster is null ? "One page" : $"{practice.Dealt.Students.Count} pages")} to practise with, seed {practice.Request.Seed}. The answers are in the page: it is for practice, not for work that is handed in.",
            .. practice.Draws,
        ];
    }
}
