namespace ClassKit.Baking.Weighing;

/// <summary>Rounds amounts so that they still sum to the rounded total.</summary>
internal static class LargestRemainder
{
    /// <summary>What separates a whole number of divisions from the noise of the last bits of a double.</summary>
    private const double Noise = 1e-9;

    /// <summary>
    /// Whole divisions for each amount, summing to <paramref name="total"/>: every amount is rounded down,
    /// and the divisions left over go to those that lost most, the larger amount first and then the earlier one where they lost the same.
    /// </summary>
    /// <param name="amounts">In divisions, not negative.</param>
    /// <param name="total">In divisions, within one for each amount of the amounts' own sum.</param>
    public static long[] Apportion(IReadOnlyList<double> amounts, long total)
    {
        var parts = new long[amounts.Count];
        for (var i = 0; i < parts.Length; i++)
            parts[i] = (long)Math.Floor(amounts[i] + Noise * Math.Max(1, amounts[i]));

        var left = total - parts.Sum();
        var neediest = Enumerable
            .Range(0, parts.Length)
            .OrderByDescending(i => Math.Round(amounts[i] - parts[i], 9, MidpointRounding.AwayFromZero))
            .ThenByDescending(i => amounts[i])
            .ThenBy(i => i)
            .ToArray();
        if (left < 0)
            Array.Reverse(neediest);
        for (var turn = 0; left != 0 && neediest.Length > 0; turn++)
        {
            var i = neediest[turn % neediest.Length];
            parts[i] += Math.Sign(left);
            left -= Math.Sign(left);
        }
        return parts;
    }

    /// <summary>The nearest whole number of divisions, halves away from zero.</summary>
    public static long Nearest(double amount) => (long)Math.Round(amount + Noise * Math.Sign(amount), MidpointRounding.AwayFromZero);
}
