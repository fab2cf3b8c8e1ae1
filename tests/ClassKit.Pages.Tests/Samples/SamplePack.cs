using ClassKit.BenchPlans;
using ClassKit.Content;
using ClassKit.Lessons;

namespace ClassKit.Pages.Tests.Samples;

/// <summary>The lesson pack of the shipped lesson for the shipped class.</summary>
internal static class SamplePack
{
    public static LessonPack Pack { get; } = Build();

    private static LessonPack Build()
    {
        var lesson = LessonReader.Read(Path.Combine(Root(), "lessons", "one-tin-three-lifts", "lesson.md"));
        var profile = ClassProfileReader.Read(Path.Combine(Root(), "demo-cohort", "class.md"));
        Assert.Empty(lesson.Problems);
        Assert.Empty(profile.Problems);
        var bench = new BenchPlanner(new NoSolver(), PlannerSettings.Default).Plan(BenchClasses.Of(lesson.Model!, profile.Model!));
        return LessonPack.Build(lesson.Model!, profile.Model!).Value with { Bench = bench };
    }

    private static string Root()
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (!File.Exists(Path.Combine(folder.FullName, "ClassKit.sln")))
            folder = folder.Parent ?? throw new DirectoryNotFoundException("These tests run from within the repository.");
        return folder.FullName;
    }
}
