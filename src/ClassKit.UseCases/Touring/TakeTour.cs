using ClassKit.Content;
using ClassKit.Exercises;

namespace ClassKit.UseCases;

/// <summary>The whole job on the demo class: pack, practice, deal, grade.</summary>
public static class TakeTour
{
    /// <summary>The command, and the kind of its output folder.</summary>
    public const string Kind = "tour";

    /// <summary>The files to open first, with what they are for.</summary>
    public static IReadOnlyList<(string File, string What)> OpenFirst { get; } =
    [
        ("pack/index.html", "the lesson pack: handout, guide, formula cards, the comparison of the three leavenings"),
        ("graded/class-report.html", "what to teach again, and to whom"),
        ("graded/gradebook.xlsx", "the points, with live totals"),
    ];

    /// <summary>Makes everything the tour makes, in four folders.</summary>
    public static Produced Make(DemoMaterial demo)
    {
        ArgumentNullException.ThrowIfNull(demo);
        var lesson = LessonReader.Read(demo.Lesson);
        var profile = ClassProfileReader.Read(demo.Class);
        var roster = ClassList.Of(demo.Roster, profile);
        if (!lesson.Succeeded || !profile.Succeeded || !roster.Succeeded)
            return Produced.Nothing([.. lesson.Problems, .. roster.Problems]);

        var pack = BuildPack.Make(lesson.Model, profile.Model, demo.Class);
        if (!pack.Succeeded) return pack;
        var (dealing, dealt) = DealPractice.Make(lesson.Model, roster.Model, DemoMaterial.Seed, demo.Lesson);
        if (dealt is null) return dealing;
        var practice = MakePractice.Make(PracticeSet.Of(lesson.Model), null, NumbersToAvoid.OfAnyone(dealt), DemoMaterial.Seed, demo.Lesson);
        if (!practice.Succeeded) return practice;
        var grading = GradeClass.Make(dealt, demo.Returned, demo.Corrections, Deadline.None);
        if (!grading.Succeeded) return grading;

        return new(
            [
                .. pack.Files.Select(file => file.Below("pack")),
                .. practice.Files.Select(file => file.Below("practice")),
                .. dealing.Files.Select(file => file.Below("dealt")),
                .. grading.Files.Select(file => file.Below("graded")),
            ],
            [.. pack.Notes, .. practice.Notes, .. dealing.Notes, .. grading.Notes], []);
    }
}
