using ClassKit.Exercises.Authoring;
using ClassKit.Grading.Judging.Trials;
using ClassKit.Grading.Numbers;

namespace ClassKit.Grading.Judging;

/// <summary>
/// Tells numbers that say how somebody came to them from those that many methods give, or none: 0, 1, 100, a number copied from the sheet.
/// </summary>
internal static class TellingNumbers
{
    /// <summary>Whether a number that is not right can be evidence of a method.</summary>
    /// <param name="number">As the cell holds it.</param>
    /// <param name="dealt">The student's sheet.</param>
    /// <param name="part">The part that it answers.</param>
    public static bool Is(double number, Trial dealt, Part part) =>
        number != 0
        && !IsPowerOfTen(number)
        && !OnTheSheet(dealt, part).Any(other => Near.Written.Same(other, number) || Near.Written.Same(other, part.Unit.Held(number)));

    private static IEnumerable<double> OnTheSheet(Trial dealt, Part part) =>
        dealt
            .Right.Givens.Values.Select(given => (double)given)
            .Concat(
                dealt
                    .Right.Exercise.Parts.TakeWhile(before => before != part)
                    .Where(before => dealt.Held.ContainsKey(before.Id))
                    .Select(before => dealt.Held[before.Id])
            );

    /// <summary>True for 1, 10, 0.1 and their like, and their negatives.</summary>
    public static bool IsPowerOfTen(double number) =>
        Near.Written.Same(Math.Round(Math.Log10(Math.Abs(number)), MidpointRounding.AwayFromZero), Math.Log10(Math.Abs(number)));
}
