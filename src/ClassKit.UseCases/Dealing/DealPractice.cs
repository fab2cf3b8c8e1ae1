using ClassKit.Content;
using ClassKit.Exercises;
using ClassKit.Lessons;
using ClassKit.Pages;
using ClassKit.Workbooks;

namespace ClassKit.UseCases;

/// <summary>Deals a class its practice workbooks: one a student, the same on a sheet to print, the answer key, and dealt.json for grading.</summary>
public static class DealPractice
{
    /// <summary>The command, and the kind of its output folder.</summary>
    public const string Kind = "deal";

    /// <summary>The seed when none is named.</summary>
    public const ulong DefaultSeed = 1;

    /// <summary>Reads a lesson, or a folder of exercises, and a roster, and makes everything that dealing makes.</summary>
    /// <param name="folder">The lesson's folder, or one of exercises.</param>
    /// <param name="rosterFile">The students.</param>
    /// <param name="wish">Which exercises are wanted; <see cref="SetWish.None"/> for all of the lesson's own.</param>
    /// <param name="seed">Decides every draw.</param>
    public static Produced Make(string folder, string rosterFile, SetWish wish, ulong seed)
    {
        ArgumentNullException.ThrowIfNull(wish);
        var set = PracticeSet.Read(folder, wish, seed);
        var roster = RosterReader.Read(rosterFile);
        if (!set.Succeeded || !roster.Succeeded) return Produced.Nothing([.. set.Problems, .. roster.Problems]);
        var produced = Make(set.Model, roster.Model, seed, folder).Produced;
        return produced.Succeeded && !wish.IsNone ? produced with { Notes = [set.Model.Summary, .. produced.Notes] } : produced;
    }

    /// <summary>Deals a lesson that is at hand.</summary>
    internal static (Produced Produced, DealtClass? Dealt) Make(Lesson lesson, Roster roster, ulong seed, string lessonFolder) =>
        Make(PracticeSet.Of(lesson), roster, seed, lessonFolder);

    private static (Produced Produced, DealtClass? Dealt) Make(PracticeSet set, Roster roster, ulong seed, string folder)
    {
        var result = Dealer.Deal(set.Id, set.Title, set.Exercises, set.Marking, roster, seed);
        if (result.Class is not { } dealt)
            return (Produced.Nothing([.. result.Problems.Select(problem => new Diagnostic(folder, null, "An exercise cannot be dealt", problem))]), null);
        var writer = new DealtWorkbookWriter(dealt);
        return (new(
            [
                .. dealt.Students.Select(student => new OutputFile(student.Workbook, stream => stream.Write(writer.Write(student)))),
                .. dealt.Students.Select(student => OutputFile.OfText($"sheets/{student.Student.Id}.html", () => HtmlPages.Sheet(dealt, student))),
                OutputFile.OfText("answer-key.html", () => HtmlPages.AnswerKey(dealt)),
                new OutputFile(DealtJson.FileName, stream => DealtJson.Write(stream, dealt)),
            ],
            [
                $"{dealt.Students.Count} workbooks of {dealt.Exercises.Count} exercises, seed {seed}. Hand out only what is in workbooks, or in sheets for work on paper; keep {DealtJson.FileName} and the key to yourself.",
                .. result.Notes,
            ], []), dealt);
    }
}
