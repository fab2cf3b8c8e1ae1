namespace ClassKit.CellFormulas.Functions;

/// <summary>Where a balance of payments is zero, as a rate above -100 %.</summary>
internal static class RootFinding
{
    /// <summary>What finding a root costs in steps, for each term of the balance.</summary>
    public const int Cost = 500;

    private const int Attempts = 100;
    private const double Nearness = 1e-12;

    /// <summary>Not a number where it leads nowhere.</summary>
    public static double Newton(Func<double, double> balance, double rate)
    {
        const double Step = 1e-6;
        for (var attempt = 0; attempt < Attempts; attempt++)
        {
            var slope = (balance(rate + Step) - balance(rate - Step)) / (2 * Step);
            var next = rate - balance(rate) / slope;
            if (!double.IsFinite(next) || next <= -1 || Math.Abs(next - rate) < Nearness)
                return next;
            rate = next;
        }

        return double.NaN;
    }

    /// <summary>The first change of sign between -99 % and 1000 %; not a number if there is none.</summary>
    public static double Halving(Func<double, double> balance)
    {
        const double Width = 0.05;
        for (var low = -0.99; low < 10; low += Width)
        {
            var (from, to) = (low, low + Width);
            if (!(balance(from) * balance(to) < 0))
                continue;
            for (var attempt = 0; attempt < Attempts; attempt++)
            {
                var middle = (from + to) / 2;
                if (balance(middle) > 0 == balance(from) > 0)
                    from = middle;
                else
                    to = middle;
            }

            return from;
        }

        return double.NaN;
    }
}
