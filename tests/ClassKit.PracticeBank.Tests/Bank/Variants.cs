using ClassKit.Exercises;

namespace ClassKit.PracticeBank.Tests;

/// <summary>Variants as students get them.</summary>
internal static class Variants
{
    /// <summary>More draws thrown away in a row than this and the ranges do not fit the constraints.</summary>
    private const int MostRejections = 100;

    /// <summary>As many as asked for, the same ones every time.</summary>
    public static IEnumerable<Variant> Draw(Exercise exercise, int count)
    {
        var random = SeededDraws.For(20_261_125, "bank", exercise.Id);
        for (var drawn = 0; drawn < count; drawn++)
        {
            var drawing = VariantDrawer.Draw(exercise, random);
            Assert.True(drawing.Variant is not null && drawing.Rejections.Values.Sum() <= MostRejections, $"{exercise.Id}: {drawing.Rejections.Values.Sum()} draws in a row were thrown away, mostly because {drawing.MainReason}.");
            yield return drawing.Variant;
        }
    }
}
