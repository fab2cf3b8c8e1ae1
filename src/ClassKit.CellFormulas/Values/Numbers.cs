namespace ClassKit.CellFormulas.Values;

/// <summary>Arithmetic where binary fractions would otherwise surprise someone who thinks in decimals.</summary>
internal static class Numbers
{
    /// <summary>Two numbers nearer than this, relative to their size, came from the same decimal number.</summary>
    private const double Closeness = 1.0 / (1L << 48);

    /// <summary>However large a number is, a fraction of this size is no rounding noise.</summary>
    private const double Hair = 1e-3;

    private const double WholeFrom = 4503599627370496; // 2^52: no fraction left to round

    /// <summary>The sum; 0 when all that is left of it is rounding noise, so that <c>=0.1+0.2-0.3</c> is 0.</summary>
    public static double Add(double a, double b)
    {
        var sum = a + b;
        return sum != 0 && Math.Abs(sum) < Math.Abs(a) * Closeness ? 0 : sum;
    }

    /// <summary>Whether two numbers are the same but for rounding noise.</summary>
    public static bool Same(double a, double b) => a == b || Math.Abs(a - b) < Math.Min(Math.Abs(a), Math.Abs(b)) * Closeness;

    /// <summary>The order of two numbers; those that are the <see cref="Same"/> are equal.</summary>
    public static int Compare(double a, double b) => Same(a, b) ? 0 : a.CompareTo(b);

    /// <summary>The largest whole number not above; a number a hair below a whole one counts as that.</summary>
    public static double Floor(double x)
    {
        var nearest = Math.Round(x, MidpointRounding.AwayFromZero);
        return Same(x, nearest) && Math.Abs(x - nearest) < Hair ? nearest : Math.Floor(x);
    }

    /// <summary>The smallest whole number not below; a number a hair above a whole one counts as that.</summary>
    public static double Ceiling(double x) => -Floor(-x);

    /// <summary>The whole part towards zero.</summary>
    public static double Truncate(double x) => x < 0 ? Ceiling(x) : Floor(x);

    /// <summary>
    /// Rounds to decimal places, halves away from zero. A number that is a half in decimal counts as one even when its binary form lies a
    /// hair below.
    /// </summary>
    /// <remarks>OpenFormula 1.3, 6.17 (ROUND).</remarks>
    public static double Round(double x, int places) => Scaled(x, places, static scaled => Floor(scaled + 0.5));

    /// <summary>Rounds to decimal places, away from zero.</summary>
    public static double RoundUp(double x, int places) => Scaled(x, places, Ceiling);

    /// <summary>Rounds to decimal places, towards zero.</summary>
    public static double RoundDown(double x, int places) => Scaled(x, places, Floor);

    private static double Scaled(double x, int places, Func<double, double> whole)
    {
        if (x == 0 || places > 300)
            return x;
        if (places < -308)
            return 0;
        var size = Math.Abs(x);
        var factor = Math.Pow(10, Math.Abs(places));
        var scaled = places >= 0 ? size * factor : size / factor;
        if (scaled >= WholeFrom)
            return x;
        scaled = whole(scaled);
        var rounded = places >= 0 ? scaled / factor : scaled * factor;
        return x < 0 && rounded != 0 ? -rounded : rounded;
    }
}
