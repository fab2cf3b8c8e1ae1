using ClassKit.Content.Diagnostics;
using ClassKit.Content.Terms;
using ClassKit.Notes;
using ClassKit.Pages;
using ClassKit.Terms.Agreement;
using ClassKit.Terms.Grades;
using ClassKit.Terms.Outlooks;
using ClassKit.UseCases.Output;
using ClassKit.UseCases.Running;
using ClassKit.Workbooks.Terms;

namespace ClassKit.UseCases.Terms;

/// <summary>Weighs the marks of a term into grades that show how they came about.</summary>
public static class WeighTerm
{
    /// <summary>The kind of folder that its files go into.</summary>
    public const string Kind = "weigh";

    private const string Report = "term-report.html";
    private const string ToPrint = "grades-to-print.html";
    private const string Comparison = "marking-agreement.html";

    /// <summary>All that is read when a term is.</summary>
    /// <param name="path">The description of the term.</param>
    public static IEnumerable<string> Inputs(string path) => [path, .. TermReader.Read(path).Model?.Inputs ?? []];

    /// <summary>The request for the description of a term, or everything that is wrong with it and with what it names.</summary>
    /// <param name="path">The description of the term.</param>
    public static Reading<WeighRequest> Read(string path)
    {
        var plan = TermReader.Read(path);
        return plan.Succeeded ? TermAssembly.Of(plan.Model) : new(null, plan.Problems);
    }

    /// <summary>Makes the grades.</summary>
    /// <exception cref="OperationCanceledException">The run was stopped.</exception>
    public static WeighedTerm Run(WeighRequest request, Run run)
    {
        ArgumentNullException.ThrowIfNull(request);
        ArgumentNullException.ThrowIfNull(run);
        return new(
            request,
            TermGrader.Grade(request.Term, run.Each(RunStep.Weighing, request.Term.Class.Students)),
            [.. request.MarkedTwice.Select(marked => MarkerAgreement.Of(marked.Work, marked.Marking))]
        );
    }

    /// <summary>The files of the grades.</summary>
    public static Produced Write(WeighedTerm weighed)
    {
        ArgumentNullException.ThrowIfNull(weighed);
        var (term, grades, agreement) = (weighed.Request.Term, weighed.Grades, weighed.Agreement);
        return new(
            [
                OutputFile.OfText(Report, () => HtmlPages.TermReport(term, grades)),
                OutputFile.OfText(ToPrint, () => HtmlPages.GradesToPrint(term, grades)),
                new("term.xlsx", stream => stream.Write(TermWorkbookWriter.Write(term, grades))),
                .. agreement.Count == 0
                    ? []
                    : new[] { OutputFile.OfText(Comparison, () => HtmlPages.Agreement(term.Title, term.Class, agreement)) },
                .. grades.Select(grade =>
                    OutputFile.OfText($"students/{grade.Student.Id}.html", () =>
                        HtmlPages.TermStudent(term, grade, Outlook.Of(term, grade))
                    )
                ),
            ],
            [.. weighed.Request.Notes, .. agreement.Select(work => new Note.MarkedTwice(work.Work, Comparison)), .. Counts(grades)],
            []
        )
        {
            Open = [Report],
        };
    }

    private static IEnumerable<Note> Counts(IReadOnlyList<TermGrade> grades)
    {
        var (graded, provisional, held) = (
            grades.Count(grade => grade.Place is not null),
            grades.Count(grade => grade.IsProvisional),
            grades.Count(grade => grade.Place < grade.ByAverage)
        );
        yield return new Note.Weighed(graded, grades.Count);
        if (provisional > 0)
            yield return new Note.Provisional(provisional);
        if (held > 0)
            yield return new Note.HeldBack(held);
    }
}
