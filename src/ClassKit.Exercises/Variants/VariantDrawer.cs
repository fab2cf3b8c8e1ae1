namespace ClassKit.Exercises;

/// <summary>Draws variants of an exercise that keep every rule.</summary>
public static class VariantDrawer
{
    /// <summary>How many draws in a row may break a rule before the exercise itself is at fault.</summary>
    public const int MostAttempts = 1000;

    /// <summary>Draws givens until they keep every rule and <paramref name="accept"/> takes them.</summary>
    /// <param name="exercise">The exercise.</param>
    /// <param name="random">Where chance comes from.</param>
    /// <param name="accept">A last word on a variant that keeps the rules; null takes any.</param>
    public static Drawing Draw(Exercise exercise, SeededDraws random, Func<Variant, bool>? accept = null)
    {
        ArgumentNullException.ThrowIfNull(exercise);
        ArgumentNullException.ThrowIfNull(random);
        var rejections = new Dictionary<string, int>();
        for (var attempt = 0; attempt < MostAttempts; attempt++)
        {
            var givens = exercise.Givens.ToDictionary(given => given.Id, given => given.ValueAt(random.Below(given.Count)));
            if (VariantRules.TryMake(exercise, givens, out var broken) is not { } variant)
                Count(rejections, broken!);
            else if (accept is not null && !accept(variant))
                Count(rejections, Drawing.Refused);
            else
                return new(variant, rejections);
        }
        return new(null, rejections);
    }

    private static void Count(Dictionary<string, int> rejections, string reason) =>
        rejections[reason] = rejections.GetValueOrDefault(reason) + 1;
}
