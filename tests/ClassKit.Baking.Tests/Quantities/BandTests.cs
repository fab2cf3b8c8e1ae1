using System.Collections;
using System.Reflection;
using ClassKit.Baking.Formulas;
using ClassKit.Baking.GasBudgets;
using ClassKit.Baking.Quantities;

namespace ClassKit.Baking.Tests.Quantities;

public sealed class BandTests
{
    /// <summary>An end that is put through a falling function comes out as the other end; nothing here may forget to turn it round.</summary>
    [Fact]
    public void Every_band_of_a_budget_and_of_its_settings_is_in_order()
    {
        List<object> all = [GasBudgetSettings.Default, .. Enum.GetValues<HoldingKind>().Select(GasHolding.Of), .. Budgets()];
        var bands = all.SelectMany(root => Bands(root, root.GetType().Name, [])).ToList();

        Assert.True(bands.Count > 1000);
        Assert.All(bands, band => Assert.True(band.Low <= band.High && band.Low <= band.Typical && band.Typical <= band.High, $"{band}"));
    }

    private static IEnumerable<GasBudget> Budgets()
    {
        foreach (var formula in (BakersFormula[])[Doughs.Buns, Doughs.Muffins, Doughs.Popovers, Doughs.Worksheet])
        foreach (var minutes in (double[])[0, 20, 90, 400])
        foreach (var pascals in (double[])[101_325, 78_000])
            yield return GasBudget
                .Of(
                    formula,
                    Mass.FromGrams(60),
                    [
                        new("Rise", new(minutes * 0.8, minutes, minutes * 1.2), Temperature.FromCelsius(28), false),
                        new("Shape", new(2, 3, 4), Temperature.FromCelsius(28), false, true),
                        new("Proof", new(minutes / 4, minutes / 2, minutes), Temperature.FromCelsius(33), false),
                        new("Bake", new(15, 20, 25), Temperature.FromCelsius(200), true),
                    ],
                    Temperature.FromCelsius(25),
                    Pressure.FromPascals(pascals),
                    GasBudgetSettings.Default
                )
                .Value;
    }

    private static IEnumerable<(string Path, double Low, double Typical, double High)> Bands(
        object? from,
        string path,
        HashSet<object> seen
    )
    {
        if (from is null or string || from.GetType() is { IsPrimitive: true } or { IsEnum: true })
            yield break;
        var type = from.GetType();
        if (type is { IsGenericType: true } && type.GetGenericTypeDefinition() == typeof(Band<>))
        {
            yield return (path, Number(type, from, "Low"), Number(type, from, "Typical"), Number(type, from, "High"));
            yield break;
        }
        if (type.Namespace?.StartsWith("ClassKit", StringComparison.Ordinal) == true && (type.IsValueType || seen.Add(from)))
        {
            foreach (var property in type.GetProperties(BindingFlags.Public | BindingFlags.Instance))
                if (property.GetIndexParameters().Length == 0)
                    foreach (var band in Bands(property.GetValue(from), $"{path}.{property.Name}", seen))
                        yield return band;
        }
        else if (from is IEnumerable items)
            foreach (var item in items)
            foreach (var band in Bands(item, path + "[]", seen))
                yield return band;
    }

    private static double Number(Type band, object of, string end) =>
        band.GetProperty(end)!.GetValue(of) switch
        {
            double number => number,
            Mass mass => mass.Grams,
            Volume volume => volume.Litres,
            Temperature temperature => temperature.Celsius,
            AmountOfSubstance amount => amount.Moles,
            var other => throw new InvalidOperationException($"No order is known here of {other?.GetType()}."),
        };
}
