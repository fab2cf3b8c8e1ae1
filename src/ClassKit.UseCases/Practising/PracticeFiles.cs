using ClassKit.Notes;
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
        return
        [
            .. dealt.Students.Select(student =>
                OutputFile.OfText(isForAnyone ? ForAnyone : $"pages/{student.Who.Id}.html", () => HtmlPages.SelfCheck(dealt, student))
            ),
        ];
    }

    /// <summary>What an instructor should know of them.</summary>
    public static IReadOnlyList<Note> Notes(PracticeMade practice)
    {
        ArgumentNullException.ThrowIfNull(practice);
        return
        [
            new Note.SetChosen(practice.Dealt.Exercises),
            new Note.PracticeMade(practice.Request.Roster is null ? null : practice.Dealt.Students.Count, practice.Request.Seed),
            .. practice.Shared.Select(variants => new Note.VariantsShared(variants)),
            .. practice.LeftOut.Select(one => new Note.LeftOutOfPractice(one)),
        ];
    }
}
