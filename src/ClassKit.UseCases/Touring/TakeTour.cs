using ClassKit.Content;
using ClassKit.Exercises;

namespace ClassKit.UseCases;

/// <summary>The whole job on the demo class: pack, practice, deal, grade.</summary>
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
    ];

    /// <summary>Reads the material and does the whole job.</summary>
    /// <returns>All of it, or what is wrong with the material.</returns>
    /// <exception cref="OperationCanceledException">The run was stopped.</exception>
    public static Reading<TourMade> Run(DemoMaterial demo, Run run)
    {
        ArgumentNullException.ThrowIfNull(demo);
        ArgumentNullException.ThrowIfNull(run);
        var library = Library.OfDisk();
        var lesson = LessonReader.Read(library.At(demo.Lesson));
        var profile = ClassProfileReader.Read(library.At(demo.Class));
        var roster = ClassList.Of(library.At(demo.Roster), profile);
        if (!lesson.Succeeded || !profile.Succeeded || !roster.Succeeded) return new(null, [.. lesson.Problems, .. roster.Problems]);

        var set = PracticeSet.Of(lesson.Model) with { Source = demo.Lesson };
        var pack = BuildPack.Run(new(lesson.Model, profile.Model, demo.Class), run);
        if (!pack.Succeeded) return new(null, pack.Problems);
        var deal = DealPractice.Run(new(set, roster.Model, new(SetWish.None, IsSpread: false, DemoMaterial.Seed)), run);
        if (!deal.Succeeded) return new(null, deal.Problems);
        var practice = MakePractice.Run(new(set, DemoMaterial.Seed) { Avoid = NumbersToAvoid.OfAnyone(deal.Model.Dealt) }, run);
        if (!practice.Succeeded) return new(null, practice.Problems);
        var grading = new GradePaths("dealt", demo.Returned) { Corrections = demo.Corrections }.Read(deal.Model.Dealt);
        return grading.Succeeded
            ? new(new(pack.Model, practice.Model, deal.Model, GradeClass.Run(grading.Model, run)), [])
            : new(null, grading.Problems);
    }

    /// <summary>The files, in four folders.</summary>
    public static Produced Write(TourMade tour)
    {
        ArgumentNullException.ThrowIfNull(tour);
        var (pack, practice, deal) = (PackFiles.Write(tour.Pack), PracticePaths.Write(tour.Practice), DealPaths.Write(tour.Deal));
        return new(
            [
                .. pack.Files.Select(file => file.Below("pack")),
                .. practice.Files.Select(file => file.Below("practice")),
                .. deal.Files.Select(file => file.Below("dealt")),
                .. GradeFiles.Of(tour.Graded).Select(file => file.Below("graded")),
            ],
            [.. pack.Notes, .. practice.Notes, .. deal.Notes, .. GradeNotes.Of(tour.Graded)],
            [])
        {
            Open = [.. OpenFirst.Select(one => one.File)],
        };
    }
}
