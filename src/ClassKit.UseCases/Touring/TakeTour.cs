using ClassKit.Content.Classes;
using ClassKit.Content.Diagnostics;
using ClassKit.Exercises.Choosing;
using ClassKit.Exercises.Dealing;
using ClassKit.Notes;
using ClassKit.UseCases.Dealing;
using ClassKit.UseCases.Grading;
using ClassKit.UseCases.Output;
using ClassKit.UseCases.Packs;
using ClassKit.UseCases.Practising;
using ClassKit.UseCases.Running;

namespace ClassKit.UseCases.Touring;

/// <summary>The whole job on the demo class: pack, practice, deal, grade, and its term.</summary>
public static class TakeTour
{
    /// <summary>The kind of folder that its files go into.</summary>
    public const string Kind = "tour";

    /// <summary>The files to open first, with what they are for.</summary>
    public static IReadOnlyList<(string File, string What)> OpenFirst { get; } =
    [
        ("pack/index.html", "the lesson pack: handout, guide, formula cards, the comparison of the three leavenings"),
        ("graded/class-report.html", "what to teach again, and to whom"),
        ("graded/gradebook.xlsx", "the points, with live totals"),
        ("term/term-report.html", "the grades of the term, each with its working"),
    ];

    /// <summary>Does the whole job.</summary>
    /// <returns>All of it, or what is wrong.</returns>
    /// <exception cref="OperationCanceledException">The run was stopped.</exception>
    public static Reading<TourMade> Run(TourRequest request, Run run)
    {
        ArgumentNullException.ThrowIfNull(request);
        ArgumentNullException.ThrowIfNull(run);
        var set = PracticeSet.Of(request.Pack.Lesson);
        var pack = BuildPack.Run(request.Pack, run);
        if (!pack.Succeeded)
            return new(null, pack.Problems);
        var deal = DealPractice.Run(new(set, request.Roster, new(SetWish.None, IsSpread: false, request.Seed)), run);
        if (!deal.Succeeded)
            return new(null, deal.Problems);
        var dealt = deal.Model.Dealt;
        var practice = MakePractice.Run(new(set, request.Seed) { Avoid = NumbersToAvoid.OfAnyone(dealt) }, run);
        if (!practice.Succeeded)
            return new(null, practice.Problems);
        var corrections = CorrectionsReader.Read(request.Corrections, dealt);
        if (!corrections.Succeeded)
            return new(null, corrections.Problems);
        var graded = GradeClass.Run(new(dealt, request.Returned) { Corrections = corrections.Model }, run);
        var term = request.Term is { } asked ? TourTerm.Run(asked, request, pack.Model, graded.Grades, run) : null;
        return term is { Succeeded: false }
            ? new(null, term.Problems)
            : new(new(pack.Model, practice.Model, deal.Model, graded) { Term = term?.Model }, []);
    }

    /// <summary>The files, a folder for each step of the work.</summary>
    public static Produced Write(TourMade tour)
    {
        ArgumentNullException.ThrowIfNull(tour);
        var (pack, practice, deal) = (PackFiles.Write(tour.Pack), PracticePaths.Write(tour.Practice), DealPaths.Write(tour.Deal));
        var term = tour.Term is { } made ? TourTerm.Write(made) : Produced.Nothing();
        return new(
            [
                .. pack.Files.Select(file => file.Below("pack")),
                .. practice.Files.Select(file => file.Below("practice")),
                .. deal.Files.Select(file => file.Below("dealt")),
                .. GradeFiles.Of(tour.Graded).Select(file => file.Below("graded")),
                .. term.Files,
            ],
            [
                new Note.OfStep(TourStep.Pack),
                .. pack.Notes,
                new Note.OfStep(TourStep.Practice),
                .. practice.Notes,
                new Note.OfStep(TourStep.Deal),
                .. deal.Notes,
                new Note.OfStep(TourStep.Grading),
                .. GradeNotes.Of(tour.Graded),
                .. term.Notes,
            ],
            []
        )
        {
            Open = [.. OpenFirst.Select(one => one.File)],
        };
    }
}
