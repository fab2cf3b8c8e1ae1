using BenchmarkDotNet.Attributes;
using ClassKit.Content.Classes;
using ClassKit.Content.Lessons;
using ClassKit.Lessons.Authored;
using ClassKit.Lessons.Classes;
using ClassKit.Lessons.Packs;
using ClassKit.Pages;
using ClassKit.Pages.Values;
using ClassKit.UseCases.Packs;
using ClassKit.UseCases.Running;
using ClassKit.UseCases.Touring;

namespace ClassKit.Benchmarks.Packs;

/// <summary>
/// The claim: once the program is warm, a whole pack for 24 students, read, computed, planned and made, takes well under two seconds. A
/// fresh process takes some two more to compile what it runs. Beside it, what rendering alone costs: the same pages with nothing in them,
/// and the pages filled.
/// </summary>
[MemoryDiagnoser]
public class PackAgainstEmptyPages
{
    private readonly DemoMaterial _demo = DemoMaterial.Find(AppContext.BaseDirectory, Environment.CurrentDirectory)
        ?? throw new InvalidOperationException("The benchmark runs inside a checkout.");

    private readonly LessonPack _full;
    private readonly LessonPack _empty;

    /// <summary>Reads the lesson once for the two that only render.</summary>
    public PackAgainstEmptyPages()
    {
        var (lesson, profile) = (LessonReader.Read(_demo.Lesson).Model!, ClassProfileReader.Read(_demo.Class).Model!);
        _full = Unplanned(lesson, profile);
        _empty = Unplanned(
            lesson with
            {
                Objectives = [],
                PriorKnowledge = [],
                Vocabulary = [],
                Cautions = [],
                TalkingPoints = [],
                Questions = [],
                Failures = [],
                Formulas = [],
                Demonstrations = [],
                HandoutText = "",
                GuideText = "",
            },
            profile
        );
    }

    private static LessonPack Unplanned(Lesson lesson, ClassProfile profile) =>
        PackProse.InWords(new(ComputedPack.Build(lesson, profile).Value, new(null, null, null, [], null)));

    /// <summary>The pages of a lesson that holds nothing.</summary>
    [Benchmark(Baseline = true)]
    public int RenderEmptyPages() => HtmlPages.Pack(_empty).Sum(page => page.Html.Length);

    /// <summary>The same pages of the shipped lesson, without its bench plan.</summary>
    [Benchmark]
    public int RenderPages() => HtmlPages.Pack(_full).Sum(page => page.Html.Length);

    /// <summary>
    /// Everything that the command does between its start and writing the folder: reading, computing, planning, pages and workbooks.
    /// </summary>
    [Benchmark]
    public long WholePack() =>
        PackFiles
            .Of(BuildPack.Run(BuildPack.Read(_demo.Lesson, _demo.Class).Model!, Run.Unwatched).Model!)
            .Sum(file => (long)file.Content.Length);
}
