using ClassKit.Content.Diagnostics;
using ClassKit.Content.Sources;
using ClassKit.Content.Terms;
using ClassKit.Exercises.Cohorts;
using ClassKit.Notes;
using ClassKit.Pages;
using ClassKit.Terms.Agreement;
using ClassKit.UseCases.Output;
using ClassKit.UseCases.Running;

namespace ClassKit.UseCases.BenchMarks;

/// <summary>Compares what two markers saw of the same work, before any mark counts.</summary>
public static class CompareMarkers
{
    /// <summary>The kind of folder that its file goes into.</summary>
    public const string Kind = "compare";

    private const string Page = "marking-agreement.html";

    /// <summary>The request for a rubric, a class and two files of bench marks, or everything that is wrong with them.</summary>
    /// <param name="rubricFile">The practical rubric.</param>
    /// <param name="classFile">The class profile.</param>
    /// <param name="rosterFile">The students.</param>
    /// <param name="first">What the first marker saw: the file that the page saved, the workbook, or a table.</param>
    /// <param name="second">What the second saw.</param>
    public static Reading<MarkersRequest> Read(string rubricFile, string classFile, string rosterFile, string first, string second)
    {
        var library = Library.OfPaths();
        var read = BenchClass.Read(library, rubricFile, classFile, rosterFile);
        if (!read.Succeeded)
            return new(null, read.Problems);
        var (rubric, profile, roster) = read.Model;
        var form = BenchForms.Of(rubric, profile.Name, roster.Students, profile.Teams) with { NotAsked = NotAsked(roster) };
        var (one, other) = (
            BenchFormReader.ReadAny(library.At(first), rubric, form),
            BenchFormReader.ReadAny(library.At(second), rubric, form)
        );
        return one.Succeeded && other.Succeeded
            ? new(new(rubric.Title, roster, new(form.Scale, one.Model, other.Model)), [])
            : new(null, [.. one.Problems, .. other.Problems]);
    }

    /// <summary>
    /// What is arranged to be left out, by students' ids. Which work of the term it is stands in neither file, so that what a student leaves
    /// out of any is not compared: else whoever has an arrangement would be missing from the comparison altogether.
    /// </summary>
    private static Dictionary<string, IReadOnlySet<string>> NotAsked(Roster roster) =>
        roster
            .Arrangements.Select(one =>
                (
                    Student: one.Key,
                    Left: one.Value.OnlyFor.SelectMany(only => only.LeavesOut)
                        .Concat(one.Value.LeavesOut)
                        .ToHashSet(StringComparer.OrdinalIgnoreCase)
                )
            )
            .Where(one => one.Left.Count > 0)
            .ToDictionary(one => one.Student, one => (IReadOnlySet<string>)one.Left);

    /// <summary>Compares them.</summary>
    /// <exception cref="OperationCanceledException">The run was stopped.</exception>
    public static MarkersCompared Run(MarkersRequest request, Run run)
    {
        ArgumentNullException.ThrowIfNull(request);
        ArgumentNullException.ThrowIfNull(run);
        run.Begin(RunStep.Weighing);
        return new(request.Class, MarkerAgreement.Of(request.Work, request.Marking));
    }

    /// <summary>The page, made when it is written.</summary>
    public static Produced Write(MarkersCompared compared)
    {
        ArgumentNullException.ThrowIfNull(compared);
        var agreement = compared.Agreement;
        return new(
            [OutputFile.OfText(Page, () => HtmlPages.Agreement(agreement.Work, compared.Class, [agreement]))],
            [new Note.MarkedTwice(agreement.Work, Page)],
            []
        )
        {
            Open = [Page],
        };
    }
}
