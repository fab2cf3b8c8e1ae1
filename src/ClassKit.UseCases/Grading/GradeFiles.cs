using ClassKit.Exercises.Cohorts;
using ClassKit.Grading.FollowUps;
using ClassKit.Grading.Pseudonyms;
using ClassKit.Grading.Results;
using ClassKit.Grading.Summaries;
using ClassKit.Pages;
using ClassKit.Pages.Report;
using ClassKit.UseCases.Output;
using ClassKit.Wording.Cohorts;
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
        var (grades, another) = (graded.Grades, Another(graded.Grades));
        return
        [
            .. OfClass(graded),
            .. grades.Students.Select(student =>
                OutputFile.OfText($"feedback/{student.Who.Id}.html", () => HtmlPages.Feedback(student, grades.Dealt, another?.For(student)))
            ),
        ];
    }

    /// <summary>Those of the whole class.</summary>
    internal static IReadOnlyList<OutputFile> OfClass(GradeResult graded)
    {
        var (grades, summary, another) = (graded.Grades, graded.Summary, Another(graded.Grades));
        var parts = ClassPart.Of(grades.Students.Count);
        return
        [
            .. parts.Select(part => new OutputFile(part.Named(TypedIntoGradebook.FileName), stream =>
                stream.Write(GradebookWriter.Write(Named(grades, part), Summary(graded, part)))
            )
            {
                IsLarge = true,
            }),
            OutputFile.OfText("grades.csv", () => GradesCsv.Write(grades)),
            new(GradesJson.FileName, stream => GradesJson.Write(stream, grades)),
            OutputFile.OfText(ClassReport, () => HtmlPages.ClassReport(grades, summary, Reports(grades, parts))),
            .. parts
                .Where(part => !part.IsWhole)
                .Select(part =>
                    OutputFile.OfText(part.Named(ClassReport), () =>
                        HtmlPages.ClassReport(Named(grades, part), Summary(graded, part), written: part.Named(WrittenAnswers))
                    )
                ),
            .. WrittenAnswer.In(grades).Any()
                ? parts.Select(part => OutputFile.OfText(part.Named(WrittenAnswers), () => HtmlPages.WrittenAnswers(Named(grades, part))))
                : [],
            .. summary.WrongMethods.Count > 0
                ? [OutputFile.OfText(Proposals, () => ProposalsText.Write(summary.WrongMethods))]
                : (IEnumerable<OutputFile>)[],
            .. parts.Select(part =>
                OutputFile.OfPieces(part.Named(FeedbackToPrint), () =>
                    HtmlPages.FeedbackToPrint(grades, student => another?.For(student), part)
                )
            ),
        ];
    }

    private static AnotherTry? Another(ClassGrades grades) => grades.Judging is { } judging ? new(judging) : null;

    /// <summary>The grades of some students, in files that say which these are.</summary>
    private static ClassGrades Named(ClassGrades grades, ClassPart part) =>
        part.IsWhole
            ? grades
            : grades.Of(part) with
            {
                Dealt = grades.Dealt with { Cohort = ClassPartWords.Cohort(grades.Dealt.Cohort, part) },
            };

    private static ClassSummary Summary(GradeResult graded, ClassPart part) =>
        part.IsWhole ? graded.Summary : ClassSummarizer.Summarize(graded.Grades.Of(part), graded.Summary.FewestAlike);

    private static List<PartReport> Reports(ClassGrades grades, IReadOnlyList<ClassPart> parts) =>
        [
            .. parts
                .Where(part => !part.IsWhole)
                .Select(part => new PartReport(
                    part,
                    part.Named(ClassReport),
                    grades.Students[part.First - 1].Who.Shown,
                    grades.Students[part.Last - 1].Who.Shown
                )),
        ];

    /// <summary>The file that says who is who in reports without names.</summary>
    public static OutputFile WhoIsWho(PseudonymKey key) => OutputFile.OfText(PseudonymsCsv.FileName, () => PseudonymsCsv.Write(key));
}
