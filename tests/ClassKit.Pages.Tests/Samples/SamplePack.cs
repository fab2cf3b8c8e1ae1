using ClassKit.BenchPlans.Planning;
using ClassKit.BenchPlans.Trials;
using ClassKit.Content.Classes;
using ClassKit.Content.Diagnostics;
using ClassKit.Content.Lessons;
using ClassKit.Lessons.Authored;
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
    public static LessonPack For(ClassProfile profile) => For(profile, lesson => lesson);

    /// <summary>For another class, of a lesson that is other in something.</summary>
    public static LessonPack For(ClassProfile profile, Func<Lesson, Lesson> other)
    {
        var computed = ComputedPack.Build(other(Read(LessonReader.Read(Path.Combine(Repository.Lesson, "lesson.md")))), profile).Value;
        var bench = new BenchPlanner(new NoSolver(), PlannerSettings.Default).Plan(BenchClasses.Of(computed.Lesson, profile));
        return PackProse.InWords(new(computed, bench));
    }

    private static T Read<T>(Reading<T> reading)
        where T : class
    {
        Assert.Empty(reading.Problems);
        return reading.Model!;
    }
}
