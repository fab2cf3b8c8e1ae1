using ClassKit.Grading.FollowUps;
using ClassKit.Grading.Pseudonyms;
using ClassKit.Grading.Results;
using ClassKit.Pages;
using ClassKit.UseCases.Output;
using ClassKit.Workbooks.Gradebooks;

namespace ClassKit.UseCases.Grading;

/// <summary>The files of a graded class: gradebook, tables, feedback pages and the class report.</summary>
public static class GradeFiles
{
    /// <summary>What to open first.</summary>
    public const string ClassReport = "class-report.html";

    /// <summary>Answers in own words side by side; there only where words are at hand.</summary>
    public const string WrittenAnswers = "written-answers.html";

    /// <summary>Every student's feedback in one file.</summary>
    public const string FeedbackToPrint = "feedback-to-print.html";

    /// <summary>The wrong turns that nobody had listed, ready to be listed; there only where there are some.</summary>
    public const string Proposals = "proposed-misconceptions.md";

    /// <summary>Each made when it is written.</summary>
    public static IReadOnlyList<OutputFile> Of(GradeResult graded)
    {
        ArgumentNullException.ThrowIfNull(graded);
        var (grades, summary) = (graded.Grades, graded.Summary);
        var another = grades.Judging is { } judging ? new AnotherTry(judging) : null;
        return
        [
            new(TypedIntoGradebook.FileName, stream => stream.Write(GradebookWriter.Write(grades, summary))),
            OutputFile.OfText("grades.csv", () => GradesCsv.Write(grades)),
            new(GradesJson.FileName, stream => GradesJson.Write(stream, grades)),
            OutputFile.OfText(ClassReport, () => HtmlPages.ClassReport(grades, summary)),
            .. WrittenAnswer.In(grades).Any() ? [OutputFile.OfText(WrittenAnswers, () => HtmlPages.WrittenAnswers(grades))] : (IEnumerable<OutputFile>)[],
            .. summary.WrongMethods.Count > 0 ? [OutputFile.OfText(Proposals, () => ProposalsText.Write(summary.WrongMethods))] : (IEnumerable<OutputFile>)[],
            OutputFile.OfPieces(FeedbackToPrint, () => HtmlPages.FeedbackToPrint(grades, student => another?.For(student))),
            .. grades.Students.Select(student => OutputFile.OfText($"feedback/{student.Who.Id}.html", () => HtmlPages.Feedback(student, grades.Dealt, another?.For(student)))),
        ];
    }

    /// <summary>The file that says who is who in reports without names.</summary>
    public static OutputFile WhoIsWho(PseudonymKey key) => OutputFile.OfText(PseudonymsCsv.FileName, () => PseudonymsCsv.Write(key));
}
