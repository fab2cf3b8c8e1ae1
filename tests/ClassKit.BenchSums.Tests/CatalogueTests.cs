using System.Text.RegularExpressions;
using ClassKit.Baking.Quantities;
using ClassKit.BenchSums.Catalogue;
using ClassKit.BenchSums.Inputs;
using ClassKit.BenchSums.Results;
using CsCheck;

namespace ClassKit.BenchSums.Tests;

public partial class CatalogueTests
{
    private static readonly string[] OddTexts =
    [
        "",
        "0",
        "-1",
        "1e309",
        "0 g",
        "-5 g",
        "99999 kg",
        "300 C",
        "-300 C",
        "0 C",
        "100 C",
        "0 %",
        "100 %",
        "1000000 %",
        "1/0",
        "1 lb 1 oz",
        "0 min",
        "999 h",
        "99999 m",
        "-900 m",
        "9999999999999 g",
        "bread flour 100",
        "water 100",
        "bread flour 0",
        "0 cups",
        "12:99",
        "²",
        "١٢ g",
    ];

    public static TheoryData<string> Sums => [.. BenchSumCatalogue.All.Select(sum => sum.Id)];

    [Fact]
    public void Every_sum_has_a_name_of_its_own() =>
        Assert.Equal(BenchSumCatalogue.All.Count, BenchSumCatalogue.All.DistinctBy(sum => sum.Id).Count());

    [Theory]
    [MemberData(nameof(Sums))]
    public void Every_name_can_be_typed(string id)
    {
        var sum = BenchSumCatalogue.Find(id)!;
        Assert.All(sum.Inputs.Select(input => input.Id).Prepend(sum.Id), name => Assert.Matches(Typeable(), name));
        Assert.Equal(sum.Inputs.Count, sum.Inputs.DistinctBy(input => input.Id).Count());
    }

    [Theory]
    [MemberData(nameof(Sums))]
    public void Every_example_is_worked_out_with_its_steps(string id)
    {
        var computed = Typing.Example(BenchSumCatalogue.Find(id)!);
        Assert.True(computed.IsPossible, computed.Why?.ToString());
        Assert.NotEmpty(computed.Value.Lines);
        Assert.All(computed.Value.Lines, line => Assert.NotEmpty(QuantityText.Show(line.Quantity)));
        Assert.NotEmpty(computed.Value.Workings);
        Assert.All(computed.Value.Workings, working => Assert.NotEmpty(working.Steps));
    }

    [Theory]
    [MemberData(nameof(Sums))]
    public void Usual_values_are_enough_beside_what_is_required(string id)
    {
        var sum = BenchSumCatalogue.Find(id)!;
        var reading = SumReading.Of(
            sum,
            [.. sum.Inputs.Where(input => input.Need == InputNeed.Required).Select(input => KeyValuePair.Create(input.Id, input.Example))]
        );
        Assert.NotNull(reading.Values);
        Assert.True(sum.Work(reading.Values).IsPossible);
    }

    /// <summary>Whatever is typed, a sum gives an answer or says what to type: it never throws.</summary>
    [Theory]
    [MemberData(nameof(Sums))]
    public void Whatever_is_typed_gives_an_answer_or_a_reason(string id)
    {
        var sum = BenchSumCatalogue.Find(id)!;
        var texts = Gen.OneOf(Gen.Int[0, OddTexts.Length - 1].Select(pick => OddTexts[pick]), Gen.String);
        texts
            .Array[sum.Inputs.Count]
            .Sample(
                typed =>
                {
                    var reading = SumReading.Of(sum, [.. sum.Inputs.Zip(typed, (input, text) => KeyValuePair.Create(input.Id, text))]);
                    Assert.Equal(reading.Values is null, reading.Problems.Count > 0);
                    if (reading.Values is { } values && sum.Work(values).TryGet(out var result, out var why))
                        Assert.All(result.Lines, line => Assert.NotEmpty(QuantityText.Show(line.Quantity)));
                },
                iter: 200
            );
    }

    /// <summary>
    /// The same over values that are typed well and vary widely: each input's own kinds, so that the sums themselves are reached.
    /// </summary>
    [Theory]
    [MemberData(nameof(Sums))]
    public void Well_typed_extremes_give_an_answer_or_a_reason(string id)
    {
        var sum = BenchSumCatalogue.Find(id)!;
        Gen.Int[0, 11]
            .Array[sum.Inputs.Count]
            .Sample(
                picks =>
                {
                    var reading = SumReading.Of(
                        sum,
                        [.. sum.Inputs.Zip(picks, (input, pick) => KeyValuePair.Create(input.Id, Extreme(input, pick)))]
                    );
                    if (reading.Values is { } values && sum.Work(values).TryGet(out var result, out _))
                        Assert.All(result.Lines, line => Assert.NotEmpty(QuantityText.Show(line.Quantity)));
                },
                iter: 300
            );
    }

    private static string Extreme(SumInput input, int pick) =>
        input switch
        {
            SumInput<Temperature> => new[]
            {
                "-40 C",
                "-18 C",
                "0 C",
                "0.01 C",
                "37 C",
                "60 C",
                "99 C",
                "100 C",
                "140 C",
                "-273 C",
                "1000 C",
                "30 C",
            }[pick],
            SumInput<Mass> => new[]
            {
                "0 g",
                "0.001 g",
                "1 mg",
                "1 g",
                "1 kg",
                "90 kg",
                "5 lb",
                "1/3 oz",
                "100000 kg",
                "20 g",
                "7 g",
                "2.5 g",
            }[pick],
            SumInput<Percent> => new[]
            {
                "0 %",
                "0.0001 %",
                "1 %",
                "13 %",
                "50 %",
                "52.39 %",
                "99.999 %",
                "100 %",
                "101 %",
                "1000 %",
                "5 %",
                "30 %",
            }[pick],
            SumInput<double> => new[] { "0", "0.0001", "1", "1 1/2", "2", "3", "100", "1000", "1000000", "99999999999", "1/3", "2.5" }[
                pick
            ],
            SumInput<TimeSpan> => new[]
            {
                "0 min",
                "1 min",
                "10 min",
                "1 h",
                "24 h",
                "300 h",
                "336 h",
                "0:30",
                "1/2 h",
                "90 min",
                "2 h",
                "3 h",
            }[pick],
            SumInput<Volume> => new[]
            {
                "0 mL",
                "0.01 mL",
                "1 tsp",
                "1 cup",
                "1 L",
                "500 L",
                "99999999 L",
                "1/8 tsp",
                "3 gal",
                "180 mL",
                "2 cups",
                "1 pt",
            }[pick],
            _ => input.Example,
        };

    [Fact]
    public void What_a_sum_does_not_ask_for_is_named() =>
        Assert.Contains(
            "It asks for",
            Assert.Single(Typing.Read("price", ("food-cost", "1"), ("share", "30 %"), ("colour", "red")).Problems).Why.Remedy,
            StringComparison.Ordinal
        );

    [Fact]
    public void What_is_typed_twice_is_named() =>
        Assert.Equal(
            "typed-twice",
            Assert.Single(Typing.Read("price", ("share", "30"), ("food-cost", "1"), ("SHARE", "31")).Problems).Why.Code
        );

    [Fact]
    public void Everything_missing_is_named_at_once() =>
        Assert.Equal(["dough", "flour", "room", "friction"], Typing.Read("water-temperature").Problems.Select(problem => problem.Name));

    [Theory]
    [InlineData("milk", "several-ingredients")]
    [InlineData("moon dust", "unknown-ingredient")]
    public void An_ingredient_that_is_unclear_is_asked_about(string name, string code) =>
        Assert.Equal(code, Assert.Single(Typing.Read("to-cups", ("ingredient", name), ("amount", "10 g")).Problems).Why.Code);

    [GeneratedRegex("^[a-z]+(-[a-z]+)*$")]
    private static partial Regex Typeable();
}
