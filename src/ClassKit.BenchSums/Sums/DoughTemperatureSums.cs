using ClassKit.Baking.DoughTemperatures;
using ClassKit.Baking.Quantities;
using ClassKit.BenchSums.Catalogue;
using ClassKit.BenchSums.Inputs;
using ClassKit.BenchSums.Results;

namespace ClassKit.BenchSums.Sums;

/// <summary>How warm the water, how much ice, how warm the dough.</summary>
internal static class DoughTemperatureSums
{
    private static readonly SumInput<Temperature> Dough = Ask.For("dough", "the dough's temperature", Notations.Temperature, "25 C");
    private static readonly SumInput<Temperature> Flour = Ask.For("flour", "the flour's temperature", Notations.Temperature, "21 C");
    private static readonly SumInput<Temperature> Room = Ask.For("room", "the room's temperature", Notations.Temperature, "23 C");
    private static readonly SumInput<Temperature> Water = Ask.For("water", "the water's temperature", Notations.Temperature, "18 C");
    private static readonly SumInput<Temperature> Preferment = Ask.Perhaps(
        "preferment",
        "the preferment's temperature",
        Notations.Temperature,
        "22 C"
    );
    private static readonly SumInput<TemperatureDifference> Friction = Ask.For(
        "friction",
        "the friction factor of your mixer",
        Notations.Warming,
        "12 C"
    );
    private static readonly SumInput<Mass> Amount = Ask.For("amount", "all the water of the formula", Notations.Mass, "10 kg");
    private static readonly SumInput<Temperature> Tap = Ask.For("tap", "the tap's temperature", Notations.Temperature, "18 C");
    private static readonly SumInput<Temperature> Wanted = Ask.For(
        "wanted",
        "the water's temperature that is wanted",
        Notations.Temperature,
        "5 C"
    );
    private static readonly SumInput<Temperature> IceCold = Ask.Usually(
        "ice",
        "the ice's own temperature: 0 C from a machine's bin, -18 C from a freezer",
        Notations.Temperature,
        "0 C"
    );
    private static readonly SumInput<IceModel> Counted = Ask.Usually(
        "counted",
        "how ice is counted",
        Notations.OneOf(Enum.GetValues<IceModel>(), model => model.ToString()),
        nameof(IceModel.Replacing)
    );

    public static IReadOnlyList<BenchSum> All { get; } =
    [
        new("water-temperature", "How warm must the water be?", SumTopic.Temperature, [Dough, Flour, Room, Preferment, Friction], values =>
            DoughTemperature
                .LiquidFor(values.Of(Dough), [.. Factors(values)], values.Of(Friction))
                .Then<SumResult>(liquid => new SumResult(
                    [new("water", new SumQuantity.OfTemperature(liquid.Temperature))],
                    [liquid.Explanation],
                    liquid.Advice
                ))
        ),
        new("ice", "How much of the water goes in as ice?", SumTopic.Temperature, [Amount, Tap, Wanted, IceCold, Counted], values =>
            SumResult.Of(Ice.For(values.Of(Amount), values.Of(Tap), values.Of(Wanted), values.Of(Counted), values.Of(IceCold)), iced =>
                [new("ice", new SumQuantity.OfMass(iced.Ice)), new("water from the tap", new SumQuantity.OfMass(iced.Liquid))]
            )
        ),
        new("dough-temperature", "How warm will the dough be?", SumTopic.Temperature, [Water, Flour, Room, Preferment, Friction], values =>
            SumResult.Of(
                DoughTemperature.Expected([.. Factors(values), new("water", values.Of(Water))], values.Of(Friction)),
                "dough",
                dough => new SumQuantity.OfTemperature(dough)
            )
        ),
        new("friction", "How much does the mixer warm the dough?", SumTopic.Temperature, [Dough, Water, Flour, Room, Preferment], values =>
            SumResult.Of(
                DoughTemperature.Friction(values.Of(Dough), [.. Factors(values), new("water", values.Of(Water))]),
                "friction factor",
                friction => new SumQuantity.OfWarming(friction)
            )
        ),
    ];

    private static IEnumerable<TemperatureFactor> Factors(SumValues values)
    {
        yield return new("flour", values.Of(Flour));
        yield return new("room", values.Of(Room));
        if (values.Has(Preferment))
            yield return new("preferment", values.Of(Preferment));
    }
}
