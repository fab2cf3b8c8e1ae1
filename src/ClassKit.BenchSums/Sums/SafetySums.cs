using ClassKit.Baking.Chemistry;
using ClassKit.Baking.Explanations;
using ClassKit.Baking.FoodSafety;
using ClassKit.Baking.Formulas;
using ClassKit.Baking.Quantities;
using ClassKit.BenchSums.Catalogue;
using ClassKit.BenchSums.Inputs;
using ClassKit.BenchSums.Results;

namespace ClassKit.BenchSums.Sums;

/// <summary>How long food may stand, and the sodium in a portion.</summary>
internal static class SafetySums
{
    private static readonly SumInput<Temperature> Start = Ask.For(
        "start",
        "the food's temperature when it left the cold or the heat",
        Notations.Temperature,
        "4 C"
    );
    private static readonly SumInput<Temperature> Warmest = Ask.For("warmest", "the warmest that it gets", Notations.Temperature, "20 C");
    private static readonly SumInput<HoldingRule> Rule = Ask.Usually(
        "rule",
        "whose limits",
        Notations.OneOf(HoldingRule.All, rule => rule.Name),
        HoldingRule.FoodCode.Name
    );
    private static readonly SumInput<BakersFormula> Formula = Ask.Formula(
        "all-purpose flour 100, buttermilk 80, salt 1.5, baking soda 1.2"
    );
    private static readonly SumInput<Mass> Portion = Ask.For("portion", "the dough in a portion", Notations.Mass, "60 g");

    private static readonly Advice LocalRules = new(
        "local-rules",
        "Local rules and your house's own come first.",
        "FDA Food Code, 3-501.19"
    );

    public static IReadOnlyList<BenchSum> All { get; } =
    [
        new("standing-time", "How long may food stand without cold or heat?", SumTopic.Safety, [Start, Warmest, Rule], values =>
            SumResult.Of(
                TimeControl.MinutesUntilDiscarded(values.Of(Start), values.Of(Warmest), values.Of(Rule)),
                minutes => [new("discard after", new SumQuantity.OfMinutes(minutes))],
                [LocalRules]
            )
        ),
        new("sodium", "How much sodium is in a portion?", SumTopic.Safety, [Formula, Portion], values =>
            SumResult.Of(
                Sodium.In(values.Of(Formula), values.Of(Portion)),
                "sodium from salt, soda and powder",
                sodium => new SumQuantity.OfMass(sodium)
            )
        ),
    ];
}
