using ClassKit.Content.Exercises;
using ClassKit.Exercises.Draws;
using ClassKit.Exercises.Randomness;
using ClassKit.Tests.Exercises;
using ClassKit.Wording.Guarantees;

namespace ClassKit.Content.Tests.Exercises;

/// <summary>
/// A thousand variants, ten thousand where everything is tried, of every exercise of the shipped lessons, each looked at without asking the
/// generator's own rules; those of the bank are drawn, and looked at, in ClassKit.PracticeBank.Tests.
/// </summary>
public sealed class ThousandVariantsTests
{
    private static readonly int Variants = Trials.Of(10_000, 10);

    public static TheoryData<string> Files =>
        [
            .. Directory
                .EnumerateFiles(Path.Combine(Repository.Root, "lessons"), "*.md", SearchOption.AllDirectories)
                .Where(file => File.ReadLines(file).Take(10).Any(line => line.StartsWith("skill:", StringComparison.Ordinal)))
                .Select(file => Path.GetRelativePath(Repository.Root, file).Replace('\\', '/'))
                .Where(file => !file.StartsWith("lessons/practice/", StringComparison.Ordinal))
                .Order(StringComparer.Ordinal),
        ];

    [Theory]
    [MemberData(nameof(Files))]
    public void No_guarantee_is_broken_and_no_draw_thrown_away_more_than_a_hundred_times_in_a_row(string file)
    {
        var exercise = ExerciseReader.Read(Path.Combine(Repository.Root, file)).Model;
        Assert.NotNull(exercise);
        var generator = VariantGenerator.For(exercise);
        var random = new SeededDraws(20_261_125);
        var (kept, run) = (0, 0);
        while (kept < Variants)
        {
            if (generator.TryDraw(random, out _, out var breach) is not { } variant)
            {
                if (++run > 100)
                    Assert.Fail(
                        $"{file}: {run} draws in a row thrown away, the last because {BreachWords.Because(breach!)}: {BreachWords.Seen(breach!)}"
                    );
                continue;
            }
            run = 0;
            kept++;
            VariantPromises.AssertKept(exercise, variant, generator.Band!);
        }
    }
}
