using ClassKit.Content.Classes;
using ClassKit.Content.Diagnostics;
using ClassKit.Content.Rosters;
using ClassKit.Content.Rubrics;
using ClassKit.Content.Sources;
using ClassKit.Content.Terms;
using ClassKit.Exercises.Cohorts;
using ClassKit.Pages;
using ClassKit.Terms.Bench;
using ClassKit.UseCases.Dealing;
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
        var library = Library.OfPaths();
        var rubric = PracticalRubricReader.Read(library.At(rubricFile));
        var profile = ClassProfileReader.Read(library.At(classFile));
        if (ClassList.Named(library, rosterFile, classFile) is not { } list)
            return new(null, [.. rubric.Problems, .. profile.Problems, ClassList.Missing(classFile)]);
        var roster = RosterReader.Read(list, profile.Model?.Name);
        return rubric.Succeeded && profile.Succeeded && roster.Succeeded
            ? new(
                new(rubric.Model, profile.Model.Name, Namesakes.ToldApart(roster.Model.Students), profile.Model.Teams)
                {
                    Paper = profile.Model.Paper,
                },
                []
            )
            : new(null, [.. rubric.Problems, .. profile.Problems, .. roster.Problems]);
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
