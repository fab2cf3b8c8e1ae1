using ClassKit.BenchPlans.Planning;
using ClassKit.BenchPlans.Trials;
using ClassKit.Content.Classes;
using ClassKit.Content.Diagnostics;
using ClassKit.Content.Lessons;
using ClassKit.Lessons.Classes;
using ClassKit.Lessons.Packs;
using ClassKit.Pages.Values;

namespace ClassKit.Pages.Tests.Samples;

/// <summary>The lesson pack of the shipped lesson.</summary>
internal static class SamplePack
{
    /// <summary>For the shipped class.</summary>
    public static LessonPack Pack { get; } = For(Read(ClassProfileReader.Read(Path.Combine(Repository.Demo, "class.md"))));

    /// <summary>For another class.</summary>
    public static LessonPack For(ClassProfile profile)
    {
        var lesson = Read(LessonReader.Read(Path.Combine(Repository.Lesson, "lesson.md")));
        var bench = new BenchPlanner(new NoSolver(), PlannerSettings.Default).Plan(BenchClasses.Of(lesson, profile));
        return PackProse.InWords(new(ComputedPack.Build(lesson, profile).Value, bench));
    }

    private static T Read<T>(Reading<T> reading)
        where T : class
    {
        Assert.Empty(reading.Problems);
        return reading.Model!;
    }
}
