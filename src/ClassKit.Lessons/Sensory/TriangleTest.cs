namespace ClassKit.Lessons.Sensory;

/// <summary>Whether people can tell two products apart: each gets three samples, two of them alike, and points out the odd one.</summary>
/// <remarks>
/// ISO 4120:2021, "Sensory analysis – Methodology – Triangle test": whoever guesses is right one time in three, so the number of right
/// answers is binomial.
/// </remarks>
public static class TriangleTest
{
    /// <summary>How often a guess is right.</summary>
    public const double ByChance = 1.0 / 3;

    /// <summary>Below this many answers nothing can be made of them: the standard's table begins here.</summary>
    public const int FewestAnswers = 6;

    /// <summary>
    /// The least number of answers that the standard asks for where a difference of usual size is looked for; a class is often smaller, and
    /// then only large differences show. From memory.
    /// </summary>
    public const int UsualAnswers = 24;

    /// <summary>The risks of a false alarm that are tabulated, 0 to 1: 5 %, 1 % and 0.1 %.</summary>
    public static IReadOnlyList<double> Risks { get; } = [0.05, 0.01, 0.001];

    /// <summary>How likely it is that at least so many are right if nobody can tell: 0 to 1.</summary>
    /// <param name="right">Right answers; 0 or fewer are certain.</param>
    /// <param name="answers">All answers; not negative.</param>
    /// <exception cref="ArgumentOutOfRangeException">There are fewer than no answers.</exception>
    public static double ChanceOf(int right, int answers)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(answers);
        if (right <= 0)
            return 1;
        // In logarithms, so that large classes do not run out of digits.
        var logarithm = answers * Math.Log(1 - ByChance);
        var tail = 0.0;
        for (var count = 0; count <= answers; count++)
        {
            if (count >= right)
                tail += Math.Exp(logarithm);
            logarithm += Math.Log((double)(answers - count) / (count + 1)) + Math.Log(ByChance / (1 - ByChance));
        }
        return Math.Min(1, tail);
    }

    /// <summary>The fewest right answers from which a difference is said to be shown; null where even all of them would not do.</summary>
    /// <param name="answers">All answers; not negative.</param>
    /// <param name="risk">Of a false alarm; above 0, below 1.</param>
    public static int? FewestRight(int answers, double risk)
    {
        for (var right = 1; right <= answers; right++)
            if (ChanceOf(right, answers) <= risk)
                return right;
        return null;
    }
}
