using System.Collections.Concurrent;
using ClassKit.Exercises.Authoring;
using ClassKit.Exercises.Draws;
using ClassKit.Exercises.Randomness;
using ClassKit.Exercises.Variants;
using ClassKit.Wording.Guarantees;

namespace ClassKit.PracticeBank.Tests.Bank;

/// <summary>Variants as students get them.</summary>
internal static class Variants
{
    /// <summary>More draws thrown away in a row than this and the ranges do not fit the constraints.</summary>
    private const int MostRejections = 100;

    /// <summary>Making one takes a few hundred draws; it keeps nothing from one draw to the next.</summary>
    private static readonly ConcurrentDictionary<string, VariantGenerator> Generators = new();

    /// <summary>The exercise's generator.</summary>
    public static VariantGenerator Of(Exercise exercise) => Generators.GetOrAdd(exercise.Id, _ => VariantGenerator.For(exercise));

    /// <summary>As many as asked for, the same ones every time.</summary>
    public static IEnumerable<Variant> Draw(Exercise exercise, int count)
    {
        var generator = Of(exercise);
        var random = SeededDraws.For(20_261_125, "bank", exercise.Id);
        for (var drawn = 0; drawn < count; drawn++)
        {
            var drawing = generator.Draw(random);
            var thrownAway = drawing.Rejections.Sum(rejection => rejection.Count);
            if (drawing.Variant is null || thrownAway > MostRejections)
                Assert.Fail(
                    $"{exercise.Id}: {thrownAway} draws in a row were thrown away, mostly because {(thrownAway > 0 ? BreachWords.Because(drawing.Rejections[0].First) : "of nothing")}."
                );
            yield return drawing.Variant!;
        }
    }
}
