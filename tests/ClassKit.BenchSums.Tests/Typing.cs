using ClassKit.Baking.Explanations;
using ClassKit.BenchSums.Catalogue;
using ClassKit.BenchSums.Results;

namespace ClassKit.BenchSums.Tests;

/// <summary>Sums as somebody types them.</summary>
internal static class Typing
{
    public static SumReading Read(string id, params (string Name, string Text)[] typed) =>
        SumReading.Of(BenchSumCatalogue.Find(id)!, [.. typed.Select(pair => KeyValuePair.Create(pair.Name, pair.Text))]);

    public static SumResult Work(string id, params (string Name, string Text)[] typed) =>
        BenchSumCatalogue.Find(id)!.Work(Read(id, typed).Values!).Value;

    public static Computed<SumResult> Example(BenchSum sum) =>
        sum.Work(SumReading.Of(sum, [.. sum.Inputs.Select(input => KeyValuePair.Create(input.Id, input.Example))]).Values!);

    public static double Percent(this SumResult result, string label) => ((SumQuantity.OfPercent)result.Of(label)).Percent;

    public static double Grams(this SumResult result, string label) => ((SumQuantity.OfMass)result.Of(label)).Mass.Grams;

    public static SumQuantity Of(this SumResult result, string label) => result.Lines.Single(line => line.Label == label).Quantity;
}
