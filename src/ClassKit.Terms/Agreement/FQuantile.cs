using MathNet.Numerics;

namespace ClassKit.Terms.Agreement;

/// <summary>
/// Quantiles of the F distribution, also for few and broken degrees of freedom, where they grow beyond any bound that a search would begin
/// with.
/// </summary>
internal static class FQuantile
{
    private const double Widest = 200;
    private const int Halvings = 100;

    /// <summary>The value below which a share of the distribution lies; no number where the degrees of freedom are none.</summary>
    public static double Of(double probability, double above, double below)
    {
        if (!(above > 0 && below > 0 && double.IsFinite(above) && double.IsFinite(below)))
            return double.NaN;
        var (low, high) = (-Widest, Widest);
        for (var halving = 0; halving < Halvings; halving++)
        {
            var middle = (low + high) / 2;
            if (Below(Math.Exp(middle), above, below) < probability)
                low = middle;
            else
                high = middle;
        }
        return Math.Exp((low + high) / 2);
    }

    /// <summary>The share below a value: Abramowitz and Stegun, Handbook of Mathematical Functions, 26.6.2.</summary>
    private static double Below(double value, double above, double below) =>
        1 - SpecialFunctions.BetaRegularized(below / 2, above / 2, below / (below + (above * value)));
}
