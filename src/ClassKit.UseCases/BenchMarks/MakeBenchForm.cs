using ClassKit.Content.Diagnostics;
using ClassKit.Content.Sources;
using ClassKit.Content.Terms;
using ClassKit.Pages;
using ClassKit.Terms.Bench;
using ClassKit.UseCases.Output;
using ClassKit.UseCases.Running;
using ClassKit.Workbooks.Bench;

namespace ClassKit.UseCases.BenchMarks;

/// <summary>
/// Makes what bench work of a class is marked on: a workbook to type into, and a page that works in the kitchen without a network.
/// </summary>
public static class MakeBenchForm
{
    /// <summary>The kind of folder that its files go into.</summary>
    public const string Kind = "bench";

    /// <summary>The page.</summary>
    public const string Page = "bench-marks.html";

    private const string Book = "bench-marks.xlsx";

    /// <summary>The request for a practical rubric and a class, or everything that is wrong with their files.</summary>
    public static Reading<BenchFormRequest> Read(string rubricFile, string classFile, string? rosterFile)
    {
        var read = BenchClass.Read(Library.OfPaths(), rubricFile, classFile, rosterFile);
        return read.Succeeded
            ? new(
                new(read.Model.Rubric, read.Model.Profile.Name, read.Model.Roster.Students, read.Model.Profile.Teams)
                {
                    Paper = read.Model.Roster.Paper,
                },
                []
            )
            : new(null, read.Problems);
    }

    /// <summary>Makes the form.</summary>
    /// <exception cref="OperationCanceledException">The run was stopped.</exception>
    public static BenchForm Run(BenchFormRequest request, Run run)
    {
        ArgumentNullException.ThrowIfNull(request);
        ArgumentNullException.ThrowIfNull(run);
        run.Begin(RunStep.LayingOut);
        return BenchForms.Of(request.Rubric, request.Cohort, request.Students, request.Teams) with { Paper = request.Paper };
    }

    /// <summary>The files of the form, each made when it is written.</summary>
    public static Produced Write(BenchForm form)
    {
        ArgumentNullException.ThrowIfNull(form);
        return new(
            [OutputFile.OfText(Page, () => HtmlPages.BenchForm(form)), new(Book, stream => stream.Write(BenchMarksWriter.Write(form)))],
            [],
            []
        )
        {
            Open = [Page],
        };
    }
}
