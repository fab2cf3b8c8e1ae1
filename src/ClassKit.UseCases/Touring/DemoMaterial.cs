using ClassKit.Content.Classes;
using ClassKit.Content.Diagnostics;
using ClassKit.Content.Lessons;
using ClassKit.Content.Sources;
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

    /// <summary>All that the tour takes, or everything that is wrong with it.</summary>
    public Reading<TourRequest> Read()
    {
        var library = Library.OfPaths();
        var lesson = LessonReader.Read(library.At(Lesson));
        var profile = ClassProfileReader.Read(library.At(Class));
        var roster = ClassList.Of(library.At(Roster), profile);
        var returned = this == Shipped ? new(ReturnedFiles.Below(library.At(Returned)), []) : ReturnedFiles.At(Returned);
        return lesson.Succeeded && profile.Succeeded && roster.Succeeded && returned.Succeeded
            ? new(new(new(lesson.Model, profile.Model, Class), roster.Model, Seed, returned.Model, library.At(Corrections)), [])
            : new(null, [.. lesson.Problems, .. roster.Problems, .. returned.Problems]);
    }

    /// <summary>Finds the checkout at or above one of the folders; null if none is in one.</summary>
    public static DemoMaterial? Find(params IEnumerable<string> startingPoints) =>
        startingPoints.SelectMany(WithParents).Where(folder => Directory.Exists(Path.Combine(folder, "demo-cohort")) && Directory.Exists(Path.Combine(folder, "lessons")))
            .Select(folder => new DemoMaterial(folder)).FirstOrDefault();

    private static IEnumerable<string> WithParents(string folder)
    {
        for (var at = new DirectoryInfo(folder); at is not null; at = at.Parent)
            yield return at.FullName;
    }
}
