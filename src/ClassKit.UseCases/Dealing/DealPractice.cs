using ClassKit.Content;
using ClassKit.Exercises;
using ClassKit.Lessons;
using ClassKit.Pages;
using ClassKit.Workbooks;

namespace ClassKit.UseCases;

/// <summary>Deals a class its practice workbooks: one a student, the answer key, and dealt.json for grading.</summary>
public static class DealPractice
{
    /// <summary>The command, and the kind of its output folder.</summary>
    public const string Kind = "deal";

    /// <summary>The seed when none is named.</summary>
    public const ulong DefaultSeed = 1;

    /// <summary>Reads a lesson and a roster and makes everything that dealing makes.</summary>
    public static Produced Make(string lessonFolder, string rosterFile, ulong seed)
    {
        var lesson = LessonReader.Read(lessonFolder);
        var roster = RosterReader.Read(rosterFile);
        return lesson.Succeeded && roster.Succeeded
            ? Make(lesson.Model, roster.Model, seed, lessonFolder).Produced
            : Produced.Nothing([.. lesson.Problems, .. roster.Problems]);
    }

    /// <summary>Deals from models that are at hand.</summary>
    internal static (Produced Produced, DealtClass? Dealt) Make(Lesson lesson, Roster roster, ulong seed, string lessonFolder)
    {
        var result = Dealer.Deal(lesson.Id, lesson.Title, lesson.Exercises, lesson.Marking, roster, seed);
        if (result.Class is not { } dealt)
            return (Produced.Nothing([.. result.Problems.Select(problem => new Diagnostic(lessonFolder, null, "An exercise cannot be dealt", problem))]), null);
        return (new(
            [
                .. dealt.Students.Select(student => new OutputFile(student.Workbook, DealtWorkbookWriter.Write(dealt, student))),
                OutputFile.OfText("answer-key.html", HtmlPages.AnswerKey(dealt)),
                OutputFile.OfText(DealtJson.FileName, DealtJson.Write(dealt)),
            ],
            [
                $"{dealt.Students.Count} workbooks of {dealt.Exercises.Count} exercises, seed {seed}. Hand out only what is in workbooks; keep {DealtJson.FileName} and the key to yourself.",
                .. result.Notes,
            ], []), dealt);
    }
}
