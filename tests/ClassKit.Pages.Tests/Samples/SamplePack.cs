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
        var lesson = LessonReader.Read(Path.Combine(Repository.Lesson, "lesson.md"));
        var profile = ClassProfileReader.Read(Path.Combine(Repository.Demo, "class.md"));
        Assert.Empty(lesson.Problems);
        Assert.Empty(profile.Problems);
        var bench = new BenchPlanner(new NoSolver(), PlannerSettings.Default).Plan(BenchClasses.Of(lesson.Model!, profile.Model!));
        return LessonPack.Build(lesson.Model!, profile.Model!).Value with { Bench = bench };
    }
}
