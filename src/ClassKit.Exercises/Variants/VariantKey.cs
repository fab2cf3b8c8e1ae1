using System.Globalization;
using ClassKit.Exercises.Authoring;

namespace ClassKit.Exercises.Variants;

/// <summary>A text that two draws of an exercise share exactly when their givens are equal.</summary>
public static class VariantKey
{
    /// <summary>The values in the order of the exercise's givens; 0.50 and 0.5 are the same value.</summary>
    public static string Of(Exercise exercise, IReadOnlyDictionary<string, decimal> givens)
    {
        ArgumentNullException.ThrowIfNull(exercise);
        ArgumentNullException.ThrowIfNull(givens);
        return string.Join(
            ' ',
            exercise.Givens.Select(given => givens[given.Id].ToString("0.############################", CultureInfo.InvariantCulture))
        );
    }
}
