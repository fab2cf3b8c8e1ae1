using ClassKit.Baking.Formulas;
using ClassKit.Baking.Quantities;
using ClassKit.Baking.Yeast;
using ClassKit.BenchSums.Catalogue;
using ClassKit.BenchSums.Inputs;
using ClassKit.BenchSums.Results;

namespace ClassKit.BenchSums.Sums;

/// <summary>One yeast for another, and how long a rise takes.</summary>
internal static class YeastSums
{
    private const string Dough = "bread flour 100, water 65, instant yeast 1, salt 2";

    private static readonly SumInput<Mass> Yeast = Ask.For("yeast", "the yeast that there is", Notations.Mass, "20 g");
    private static readonly SumInput<YeastKind> From = Ask.For("from", "its kind", Kind, "Fresh");
    private static readonly SumInput<YeastKind> To = Ask.For("to", "the kind that is wanted", Kind, "Instant");
    private static readonly SumInput<YeastFactors> Factors = Ask.Usually(
        "factors",
        "whose factors",
        Notations.OneOf(YeastFactors.All, factors => factors.Name),
        YeastFactors.CookBook.Name
    );

    private static readonly SumInput<BakersFormula> Formula = Ask.Formula(Dough);
    private static readonly SumInput<Temperature> Warmth = Ask.For("dough", "the dough's temperature", Notations.Temperature, "26 C");
    private static readonly SumInput<double> Rise = Ask.Usually("rise", "how many times its gas-free volume", Notations.Number, "2");
    private static readonly SumInput<Percent> Held = Ask.Usually(
        "held",
        "the share of the gas that stays in: 100 % in a first rise, 40 % over a whole fermentation with punching",
        Notations.Percent,
        "100 %"
    );

    private static readonly SumInput<Mass> Amount = Ask.Usually("amount", "how much dough", Notations.Mass, "100 g");
    private static readonly SumInput<TimeSpan> Time = Ask.For("time", "the time since mixing", Notations.Time, "1 h");

    private static readonly SumInput<TimeSpan> KnownTime = Ask.For(
        "known-time",
        "the time that is known to work",
        Notations.Time,
        "1 h 30 min"
    );
    private static readonly SumInput<Temperature> KnownDough = Ask.For(
        "known-dough",
        "its dough temperature",
        Notations.Temperature,
        "26 C"
    );
    private static readonly SumInput<Temperature> PlannedDough = Ask.For(
        "planned-dough",
        "the dough temperature planned",
        Notations.Temperature,
        "18 C"
    );
    private static readonly SumInput<double> YeastTimes = Ask.Usually(
        "yeast-times",
        "the yeast planned, in times of the yeast known",
        Notations.Number,
        "1"
    );
    private static readonly SumInput<TimeSpan> PlannedTime = Ask.For("planned-time", "the time planned", Notations.Time, "12 h");

    private static Notation<YeastKind> Kind => Notations.OneOf(Enum.GetValues<YeastKind>(), kind => kind.ToString());

    public static IReadOnlyList<BenchSum> All { get; } =
    [
        new("yeast-exchange", "How much of another yeast?", SumTopic.Yeast, [Yeast, From, To, Factors], values =>
            SumResult.Of(
                values.Of(Factors).Convert(values.Of(Yeast), values.Of(From), values.Of(To)),
                "yeast",
                yeast => new SumQuantity.OfMass(yeast)
            )
        ),
        new("rise-time", "How long until the dough has risen?", SumTopic.Yeast, [Formula, Warmth, Rise, Held, Ask.Altitude], values =>
            Ask.Air(values)
                .Then(air =>
                    SumResult.Of(
                        ProofTime.Minutes(
                            values.Of(Formula),
                            values.Of(Warmth),
                            values.Of(Rise),
                            air,
                            values.Of(Held).Share,
                            YeastGasModel.Default
                        ),
                        "time",
                        Minutes
                    )
                )
        ),
        new(
            "same-gas-time",
            "How long for the same gas, warmer or colder?",
            SumTopic.Yeast,
            [KnownTime, KnownDough, PlannedDough, YeastTimes],
            values =>
                SumResult.Of(
                    EquivalentSchedule.Minutes(
                        values.Of(KnownTime).TotalMinutes,
                        values.Of(KnownDough),
                        values.Of(PlannedDough),
                        values.Of(YeastTimes),
                        YeastGasModel.Default
                    ),
                    "time",
                    Minutes
                )
        ),
        new(
            "same-gas-yeast",
            "How much yeast for the same gas in another time?",
            SumTopic.Yeast,
            [KnownTime, KnownDough, PlannedTime, PlannedDough],
            values =>
                SumResult.Of(
                    EquivalentSchedule.YeastRatio(
                        values.Of(KnownTime).TotalMinutes,
                        values.Of(KnownDough),
                        values.Of(PlannedTime).TotalMinutes,
                        values.Of(PlannedDough),
                        YeastGasModel.Default
                    ),
                    "yeast, of the known amount",
                    ratio => SumQuantity.OfRange.Of(ratio, times => new SumQuantity.OfTimes(times))
                )
        ),
        new("yeast-gas", "How much gas has the yeast made?", SumTopic.Yeast, [Formula, Amount, Warmth, Time], values =>
            SumResult.Of(
                YeastGas.Made(
                    values.Of(Formula),
                    values.Of(Amount),
                    values.Of(Warmth),
                    values.Of(Time).TotalMinutes,
                    YeastGasModel.Default
                ),
                "carbon dioxide",
                gas => SumQuantity.OfRange.Of(gas, amount => new SumQuantity.OfGas(amount))
            )
        ),
    ];

    private static SumQuantity.OfRange Minutes(Band<double> band) =>
        SumQuantity.OfRange.Of(band, minutes => new SumQuantity.OfMinutes(minutes));
}
