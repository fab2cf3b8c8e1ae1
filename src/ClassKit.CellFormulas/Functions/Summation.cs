using System.Runtime.InteropServices;

namespace ClassKit.CellFormulas.Functions;

/// <summary>Sums that carry along what rounding cut off (Neumaier's variant of Kahan's summation).</summary>
internal static class Summation
{
    public static double Of(List<double> numbers) => Of(numbers, null);

    public static double Of(List<double> numbers, Func<double, double>? term)
    {
        var sum = 0.0;
        var lost = 0.0;
        foreach (var number in CollectionsMarshal.AsSpan(numbers))
        {
            var next = term is null ? number : term(number);
            var total = sum + next;
            lost += Math.Abs(sum) >= Math.Abs(next) ? sum - total + next : next - total + sum;
            sum = total;
        }

        var whole = sum + lost;
        return double.IsFinite(whole) ? whole : sum;
    }
}
