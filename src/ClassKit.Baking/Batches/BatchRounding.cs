using ClassKit.Baking.Formulas;
using ClassKit.Baking.Quantities;
using ClassKit.Baking.Weighing;

namespace ClassKit.Baking.Batches;

/// <summary>Turns exact masses into masses that the scales can show.</summary>
internal static class BatchRounding
{
    /// <summary>
    /// The lines of a batch: what belongs on the small scale first, then the rest so that all together come as near to the exact total as
    /// the large scale allows, and lines of one mass are weighed alike.
    /// </summary>
    public static IReadOnlyList<BatchLine> Round(IReadOnlyList<(FormulaLine Line, Mass Exact)> exact, Scales scales)
    {
        var total = exact.Sum(item => item.Exact.Grams);
        var divisions = exact.Select(item => scales.For(item.Line.Ingredient, item.Exact)).ToArray();
        var weighed = new Mass[exact.Count];

        var small = Enumerable.Range(0, exact.Count).Where(i => divisions[i] < scales.Large).ToArray();
        var large = Enumerable.Range(0, exact.Count).Except(small).ToArray();
        Fill(small, scales.Small, small.Sum(i => exact[i].Exact.Grams));
        Fill(large, scales.Large, total - small.Sum(i => weighed[i].Grams));

        return [.. exact.Select((item, i) => new BatchLine(item.Line.Ingredient, item.Line.Percent, item.Exact, weighed[i], divisions[i]))];

        void Fill(int[] lines, Mass division, double groupTotal)
        {
            if (lines.Length == 0)
                return;
            var parts = LargestRemainder.Apportion(
                [.. lines.Select(i => exact[i].Exact / division)],
                LargestRemainder.Nearest(groupTotal / division.Grams)
            );
            for (var at = 0; at < lines.Length; at++)
            {
                // A remainder that falls to one of two equal lines would have 93 g of flour and 92 g of sugar both be 100 %: equals are
                // weighed alike, and the total gives way by a division.
                var equals = lines.Where(other => exact[other].Exact == exact[lines[at]].Exact).ToList();
                var count =
                    equals.Select(other => parts[Array.IndexOf(lines, other)]).Distinct().Count() == 1
                        ? parts[at]
                        : LargestRemainder.Nearest(exact[lines[at]].Exact / division);
                weighed[lines[at]] = Multiple(count, division);
            }
        }
    }

    /// <summary>In decimal, so that 253 divisions of 0.1 g are 25.3 g and not 25.300000000000001 g.</summary>
    private static Mass Multiple(long count, Mass division) => Mass.FromGrams((double)(count * (decimal)division.Grams));
}
