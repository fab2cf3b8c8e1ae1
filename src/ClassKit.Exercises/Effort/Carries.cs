namespace ClassKit.Exercises.Effort;

/// <summary>How often a one is carried when numbers are added or multiplied digit by digit.</summary>
internal static class Carries
{
    /// <summary>Carries in a sum of two numbers that are not negative; a difference has as many borrows as its check has carries.</summary>
    public static int InSum(decimal one, decimal other)
    {
        // Points stand below each other: the same power of ten makes whole numbers of both.
        while (one != decimal.Truncate(one) || other != decimal.Truncate(other))
            (one, other) = (one * 10, other * 10);
        return InSum((UInt128)one, (UInt128)other);
    }

    /// <summary>Carries in a product by the school method: within each row, and where the rows are added.</summary>
    public static int InProduct(decimal one, decimal other)
    {
        var (top, bottom) = ((ulong)Digits.Integer(one), (ulong)Digits.Integer(other));
        var carries = 0;
        UInt128 sum = 0;
        UInt128 place = 1;
        for (; bottom > 0; bottom /= 10, place *= 10)
        {
            var digit = bottom % 10;
            carries += InRow(top, digit);
            var row = (UInt128)(top * digit) * place;
            carries += InSum(sum, row);
            sum += row;
        }
        return carries;
    }

    private static int InRow(ulong top, ulong digit)
    {
        var (carries, carried) = (0, 0UL);
        for (; top > 0; top /= 10)
        {
            carried = (top % 10 * digit + carried) / 10;
            if (carried > 0)
                carries++;
        }
        return carries;
    }

    private static int InSum(UInt128 one, UInt128 other)
    {
        var carries = 0;
        var carried = false;
        for (; one > ulong.MaxValue || other > ulong.MaxValue; one /= 10, other /= 10)
            Add((ulong)(one % 10 + other % 10));
        // Nearly always all of it: the machine divides these ten times as fast.
        for (var (left, right) = ((ulong)one, (ulong)other); left > 0 || right > 0; left /= 10, right /= 10)
            Add(left % 10 + right % 10);
        return carries;

        void Add(ulong digits)
        {
            carried = digits + (carried ? 1u : 0u) >= 10;
            if (carried)
                carries++;
        }
    }
}
