using ClassKit.Content.Classes;
using ClassKit.Content.Diagnostics;
using ClassKit.Content.Lessons;
using ClassKit.Content.Sources;
using ClassKit.Content.Terms;
using ClassKit.Exercises.Choosing;
using ClassKit.UseCases.Dealing;
using ClassKit.UseCases.Intake;

namespace ClassKit.UseCases.Touring;

/// <summary>Where the invented class and its lesson lie: in a checkout, or in this program.</summary>
/// <param name="Root">The checkout's top folder, or <see cref="Content.Sources.Shipped.Scheme"/>.</param>
public sealed record DemoMaterial(string Root)
{
    /// <summary>The seed that the demo class's workbooks were dealt with; what is in <see cref="Returned"/> fits no other.</summary>
    public const ulong Seed = 2026;

    /// <summary>What this program carries, for a machine without a checkout.</summary>
    public static DemoMaterial Shipped { get; } = new(Content.Sources.Shipped.Scheme + "/");

    /// <summary>The lesson's folder.</summary>
    public string Lesson => Path.Combine(Root, "lessons", "one-tin-three-lifts");

    /// <summary>The class profile.</summary>
    public string Class => Path.Combine(Root, "demo-cohort", "class.md");

    /// <summary>The roster.</summary>
    public string Roster => Path.Combine(Root, "demo-cohort", "roster.csv");

    /// <summary>What the class handed in.</summary>
    public string Returned => Path.Combine(Root, "demo-cohort", "returned");

    /// <summary>What the instructor corrected.</summary>
    public string Corrections => Path.Combine(Root, "demo-cohort", CorrectionsReader.FileName);

    /// <summary>The folder of the class's term.</summary>
    public string TermFolder => Path.Combine(Root, "demo-cohort", "term");

    /// <summary>The description of the class's term.</summary>
    public string Term => Path.Combine(TermFolder, "term.md");

    /// <summary>The exercises of the term's second calculation set, of the bank.</summary>
    private static SetWish Second { get; } = SetWish.None with { Exercises = ["water_for_the_dough", "four_factors"] };

    /// <summary>Who sits the second set again: one who did badly, and one who was away.</summary>
    private static readonly string[] Again = ["bao-nguyen", "rosa-whitehorse"];

    /// <summary>All that the tour takes, or everything that is wrong with it.</summary>
    public Reading<TourRequest> Read()
    {
        var library = Library.OfPaths();
        var lesson = LessonReader.Read(library.At(Lesson));
        var profile = ClassProfileReader.Read(library.At(Class));
        var roster = ClassList.Of(library.At(Roster), profile);
        var returned = this == Shipped ? new(ReturnedFiles.Below(library.At(Returned)), []) : ReturnedFiles.At(Returned);
        var term = ReadTerm(library);
        return lesson.Succeeded && profile.Succeeded && roster.Succeeded && returned.Succeeded && term.Succeeded
            ? new(
                new(new(lesson.Model, profile.Model, Class), roster.Model, Seed, returned.Model, library.At(Corrections))
                {
                    Term = term.Model,
                },
                []
            )
            : new(null, [.. lesson.Problems, .. roster.Problems, .. returned.Problems, .. term.Problems]);
    }

    private Reading<TourTermMaterial> ReadTerm(Library library)
    {
        var plan = TermReader.Read(library.At(Term));
        var second = PracticeSet.Read(library.At(Path.Combine(Root, "lessons", "practice", "dough-temperature")), Second, Seed);
        return plan.Succeeded && second.Succeeded
            ? new(
                new(
                    plan.Model,
                    second.Model,
                    Files("returned"),
                    library.At(Path.Combine(TermFolder, "on-paper", "paper-answers.xlsx")),
                    Again,
                    Files("returned-resit"),
                    Files("observed")
                ),
                []
            )
            : new(null, [.. plan.Problems, .. second.Problems]);

        ReturnedFiles Files(string folder) => ReturnedFiles.Below(library.At(Path.Combine(TermFolder, folder)));
    }

    /// <summary>Finds the checkout at or above one of the folders; null if none is in one.</summary>
    public static DemoMaterial? Find(params IEnumerable<string> startingPoints) =>
        startingPoints
            .SelectMany(WithParents)
            .Where(folder => Directory.Exists(Path.Combine(folder, "demo-cohort")) && Directory.Exists(Path.Combine(folder, "lessons")))
            .Select(folder => new DemoMaterial(folder))
            .FirstOrDefault();

    private static IEnumerable<string> WithParents(string folder)
    {
        for (var at = new DirectoryInfo(folder); at is not null; at = at.Parent)
            yield return at.FullName;
    }
}
