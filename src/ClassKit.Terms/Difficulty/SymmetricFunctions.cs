namespace ClassKit.Terms.Difficulty;

/// <summary>Elementary symmetric functions: the sums of all products of so many of some values.</summary>
internal static class SymmetricFunctions
{
    /// <summary>
    /// Those of none, one, two … up to all of the values, by adding one value after another, which subtracts nothing and so loses no
    /// digits.
    /// </summary>
    /// <param name="values">Above 0.</param>
    /// <param name="without">The place of one that is left out; −1 for none.</param>
    /// <param name="nor">The place of another.</param>
    public static double[] Of(ReadOnlySpan<double> values, int without = -1, int nor = -1)
    {
        var sums = new double[values.Length + 1];
        sums[0] = 1;
        for (var (at, taken) = (0, 0); at < values.Length; at++)
        {
            if (at == without || at == nor)
                continue;
            taken++;
            for (var many = taken; many > 0; many--)
                sums[many] += values[at] * sums[many - 1];
        }
        return sums;
    }
}
