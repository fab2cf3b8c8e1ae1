using ClassKit.Content.Diagnostics;
using ClassKit.Desk.Folders;
using ClassKit.Desk.Jobs;
using ClassKit.Desk.Serving;
using ClassKit.Records.Storage;
using ClassKit.UseCases.Grading;
using ClassKit.UseCases.Output;
using ClassKit.UseCases.Output.Writing;
using ClassKit.UseCases.Recording;
using ClassKit.UseCases.Running;
using ClassKit.UseCases.Terms;

namespace ClassKit.Desk.Marks;

/// <summary>
/// A term in the record of the folder: entered with the grades that its works are made of, and frozen as it was given out.
/// </summary>
internal static class TermRecord
{
    /// <summary>The sheet of a term on which every grade has a page of its own.</summary>
    public const string ToPrint = "grades-to-print.html";

    /// <summary>Puts the term on record as it stands in its files.</summary>
    public static JobOrder Enter(Visit visit, ClassEntry known, TermEntry term) =>
        new(
            $"Keep {term.Title} for later years",
            PageOf(known, term),
            term.Title,
            Work(visit, (record, author, run) => Entered(record, author, term, run))
        );

    /// <summary>Keeps its grades as they are given out.</summary>
    public static JobOrder Freeze(Visit visit, ClassEntry known, TermEntry term) =>
        new($"Freeze the grades of {term.Title}", PageOf(known, term), term.Title, run =>
        {
            var end = Work(visit, (record, author, once) => Frozen(record, author, term, once))(run);
            return end.Problems.Count > 0 ? end
                : GivenOut(visit, known, term).Known is { } given ? KeepPages(term, given, run, end)
                : end;
        }) { Made = ($"{PageOf(known, term)}/given-out", "All grade pages, to print at once", "") };

    /// <summary>
    /// Where the pages lie of the grades as they were given out: marks that change later make other pages. Null where they were not kept.
    /// </summary>
    public static string? PagesOf(TermEntry term, GivenOut given)
    {
        ArgumentNullException.ThrowIfNull(given);
        return PlaceOf(term, given) is var file && File.Exists(file) ? file : null;
    }

    private static string PlaceOf(TermEntry term, GivenOut given) =>
        Path.Combine(
            Path.GetDirectoryName(term.File)!,
            "given-out",
            string.Create(
                System.Globalization.CultureInfo.InvariantCulture,
                $"{Path.GetFileNameWithoutExtension(term.File)}-{given.Number}.html"
            )
        );

    private static JobEnd KeepPages(TermEntry term, GivenOut given, Run run, JobEnd end)
    {
        var file = PlaceOf(term, given);
        if (File.Exists(file) || WeighTerm.Read(term.File).Model is not { } request)
            return end;
        var pages = WeighTerm.Write(WeighTerm.Run(request, run)).Files.First(made => made.Path == ToPrint);
        Directory.CreateDirectory(Path.GetDirectoryName(file)!);
        WholeFile.Write(file, pages.Content);
        return end;
    }

    /// <summary>
    /// The grades of a term as given out, whether or not its file can be read today; what is wrong with the record where it cannot.
    /// </summary>
    public static (GivenOut? Known, IReadOnlyList<Diagnostic> Problems) GivenOut(Visit visit, ClassEntry known, TermEntry term) =>
        UseCases.Recording.GivenOut.In(visit.Folder.Root, visit.Desk.Now, term.Plan.Model?.Class.Cohort ?? known.Name, term.Title);

    /// <summary>True where something is on record that a copy can be made of.</summary>
    public static bool IsThere(Visit visit) => File.Exists(RecordPlace.Of(visit.Folder.Root));

    /// <summary>Makes a copy of the whole record beside it, and says where it lies.</summary>
    public static JobOrder Copy(Visit visit, ClassEntry known, TermEntry term)
    {
        var (folder, now) = (visit.Folder.Root, visit.Desk.Now);
        return new("Make a copy of the record", PageOf(known, term), term.Title, run =>
            JobEnd.Of(
                Produced.Within(RecordPlace.Open(folder, now, mayBegin: false), record =>
                    Produced.Of(BackUpRecord.Run(new(record, now), run), BackUpRecord.Write)
                )
            )
        );
    }

    private static Func<Run, JobEnd> Work(Visit visit, Func<TeachingRecord, Author, Run, Produced> work)
    {
        var (folder, author) = (visit.Folder.Root, visit.Author(visit.Typed("why")));
        return run => JobEnd.Of(Produced.Within(RecordPlace.Open(folder, author.Now, mayBegin: true), record => work(record, author, run)));
    }

    private static Produced Entered(TeachingRecord record, Author author, TermEntry term, Run run)
    {
        List<Produced> done = [];
        foreach (var graded in (term.Plan.Model?.Works ?? []).SelectMany(work => work.Graded).Distinct())
        {
            done.Add(
                Produced.Of(GradedFolder.Read(graded, dealt: null), grades =>
                    Produced.Of(EnterGrades.Run(new(record, author, null, grades), run), EnterGrades.Write)
                )
            );
            if (!done[^1].Succeeded)
                return done[^1];
        }
        var entered = Produced.Of(EnterTerm.Read(term.File, (plan, deals) => new(record, author, null, plan, deals)), request =>
            Produced.Of(EnterTerm.Run(request, run), EnterTerm.Write)
        );
        return entered with { Notes = [.. done.SelectMany(one => one.Notes), .. entered.Notes] };
    }

    private static Produced Frozen(TeachingRecord record, Author author, TermEntry term, Run run)
    {
        var entered = Entered(record, author, term, run);
        return entered.Succeeded
            ? Produced.Of(TermOnRecord.Read(term.File, record, null), request =>
                Produced.Of(FreezeTerm.Run(new(record, author, request.Term.Class.Cohort, request.Term, true), run), FreezeTerm.Write)
            )
            : entered;
    }

    private static string PageOf(ClassEntry known, TermEntry term) => $"marks/{known.Key}/{term.Key}";
}
