namespace ClassKit.Exercises.Effort;

/// <summary>The digits that a person reads, writes and reckons with.</summary>
internal static class Digits
{
    /// <summary>Significant digits of a number as written: 2 for 1200, 3 for 0.125, 4 for 28.35; 1 for 0.</summary>
    public static int Significant(decimal number)
    {
        var whole = Integer(number);
        var count = 1;
        for (; whole >= 10; whole /= 10)
            count++;
        return count;
    }

    /// <summary>The digits without point, sign and zeros at either end: 12 for 1200, 125 for 0.125.</summary>
    public static long Integer(decimal number)
    {
        var rest = Math.Abs(number);
        if (rest == 0)
            return 0;
        while (rest != decimal.Truncate(rest) && rest < 1e17m)
            rest *= 10;
        var whole = (long)Math.Min(decimal.Truncate(rest), long.MaxValue);
        while (whole % 10 == 0)
            whole /= 10;
        return whole;
    }

    /// <summary>A number with no more than so many significant digits, the rest rounded away; 0 where it is beyond a decimal.</summary>
    public static decimal Cut(double number, int digits)
    {
        if (number == 0 || !double.IsFinite(number) || Math.Abs(number) is < 1e-9 or > 1e15)
            return 0;
        var decimals = digits - 1 - (int)Math.Floor(Math.Log10(Math.Abs(number)));
        if (decimals >= 0)
            return Math.Round((decimal)number, Math.Min(decimals, 27), MidpointRounding.AwayFromZero);
        var unit = (decimal)Math.Pow(10, -decimals);
        return Math.Round((decimal)number / unit, MidpointRounding.AwayFromZero) * unit;
    }
}
