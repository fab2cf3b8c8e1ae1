using ClassKit.Baking.Altitude;
using ClassKit.Baking.Formulas;
using ClassKit.Baking.Quantities;
using ClassKit.Baking.Steam;
using ClassKit.BenchSums.Catalogue;
using ClassKit.BenchSums.Inputs;
using ClassKit.BenchSums.Results;

namespace ClassKit.BenchSums.Sums;

/// <summary>Steam, wet bubbles and thin air.</summary>
internal static class GasSums
{
    private static readonly SumInput<Temperature> From = Ask.For("from", "the bubble's temperature", Notations.Temperature, "30 C");
    private static readonly SumInput<Temperature> To = Ask.For("to", "its temperature later", Notations.Temperature, "90 C");
    private static readonly SumInput<Volume> Hollow = Ask.For("hollow", "the hollow", Notations.Volume, "180 mL");
    private static readonly SumInput<Mass> Water = Ask.For("water", "the water", Notations.Mass, "1 g");
    private static readonly SumInput<Altitude> High = Ask.For("altitude", "the kitchen's altitude", Notations.Altitude, "1600 m");
    private static readonly SumInput<BakersFormula> Quick = Ask.Formula("all-purpose flour 100, sugar 60, whole milk 70, baking powder 4");
    private static readonly SumInput<AltitudeTable> Table = Ask.Usually(
        "table",
        "whose table",
        Notations.OneOf(AltitudeTable.All, table => table.Name),
        AltitudeTable.Extension.Name
    );

    public static IReadOnlyList<BenchSum> All { get; } =
    [
        new("bubble", "How much does a wet bubble grow?", SumTopic.GasAndAltitude, [From, To, Ask.Altitude], values =>
            Ask.Air(values)
                .Then(air =>
                    SumResult.Of(GasCell.Expansion(values.Of(From), values.Of(To), air), times =>
                        [
                            new("gas with its vapour", new SumQuantity.OfTimes(times)),
                            new("dry gas alone", new SumQuantity.OfTimes(GasCell.DryExpansion(values.Of(From), values.Of(To)))),
                        ]
                    )
                )
        ),
        new("steam-for-a-hollow", "How much water fills a hollow with steam?", SumTopic.GasAndAltitude, [Hollow, Ask.Altitude], values =>
            Ask.Air(values)
                .Then(air => SumResult.Of(SteamPocket.WaterToFill(values.Of(Hollow), air), "water", water => new SumQuantity.OfMass(water)))
        ),
        new("steam", "How much steam does water make?", SumTopic.GasAndAltitude, [Water, Ask.Altitude], values =>
            Ask.Air(values)
                .Then(air => SumResult.Of(SteamPocket.SteamFrom(values.Of(Water), air), "steam", steam => new SumQuantity.OfVolume(steam)))
        ),
        new("boiling-point", "Where does water boil here?", SumTopic.GasAndAltitude, [High], values =>
            SumResult.Of(BoilingWater.At(values.Of(High).Metres), "boiling point", point => new SumQuantity.OfTemperature(point))
        ),
        new("altitude-formula", "How is a quick bread changed for the altitude?", SumTopic.GasAndAltitude, [Quick, High, Table], values =>
            AltitudeFormula
                .For(values.Of(Quick), values.Of(High).Metres, values.Of(Table))
                .Then<SumResult>(changed => new SumResult(
                    [.. changed.Adjusted.Lines.Select(line => new SumLine(line.Ingredient.Name, new SumQuantity.OfPercent(line.Percent)))],
                    [changed.Explanation],
                    changed.Advice
                ))
        ),
    ];
}
