using ClassKit.Baking.Chemistry;
using ClassKit.Baking.Quantities;
using ClassKit.BenchSums.Catalogue;
using ClassKit.BenchSums.Inputs;
using ClassKit.BenchSums.Results;

namespace ClassKit.BenchSums.Sums;

/// <summary>Soda, acid and powder, one for another.</summary>
internal static class ChemicalSums
{
    private static readonly SumInput<Mass> Soda = Ask.For("soda", "baking soda", Notations.Mass, "5 g");
    private static readonly SumInput<Mass> Acid = Ask.For("acid", "the acid", Notations.Mass, "11 g");
    private static readonly SumInput<LeaveningAcid> Kind = Ask.Usually(
        "kind",
        "which acid",
        Notations.OneOf(LeaveningAcid.All, acid => acid.Name),
        LeaveningAcid.CreamOfTartar.Name
    );
    private static readonly SumInput<Mass> Powder = Ask.For("powder", "baking powder", Notations.Mass, "12 g");
    private static readonly SumInput<Percent> Available = Ask.Usually(
        "available",
        "carbon dioxide that a gram of the powder gives",
        Notations.Percent,
        "13 %"
    );
    private static readonly SumInput<Mass> Filler = Ask.Usually("filler", "starch", Notations.Mass, "4 g");
    private static readonly SumInput<Mass> Flour = Ask.For("flour", "flour", Notations.Mass, "100 g");
    private static readonly SumInput<Mass> Salt = Ask.Usually("salt", "salt", Notations.Mass, "0 g");
    private static readonly SumInput<Mass> Amount = Ask.For("amount", "how much of it", Notations.Mass, "5 g");
    private static readonly SumInput<Carbonate> Instead = Ask.For("instead-of", "what is replaced", Carbonates, Carbonate.BakingSoda.Name);
    private static readonly SumInput<Carbonate> With = Ask.For(
        "with",
        "what takes its place",
        Carbonates,
        Carbonate.PotassiumBicarbonate.Name
    );

    private static Notation<Carbonate> Carbonates => Notations.OneOf(Carbonate.All, carbonate => carbonate.Name);

    public static IReadOnlyList<BenchSum> All { get; } =
    [
        new("soda-and-acid", "What is left when soda meets acid?", SumTopic.Chemical, [Soda, Acid, Kind], values =>
            SumResult.Of(Neutralization.Of(values.Of(Soda), values.Of(Acid), values.Of(Kind)), Leftovers)
        ),
        new("acid-for-soda", "How much acid for the soda?", SumTopic.Chemical, [Soda, Kind], values =>
            SumResult.Of(values.Of(Kind).For(values.Of(Soda)), "acid", acid => new SumQuantity.OfMass(acid))
        ),
        new("soda-for-acid", "How much soda for the acid?", SumTopic.Chemical, [Acid, Kind], values =>
            SumResult.Of(values.Of(Kind).SodaFor(values.Of(Acid)), "baking soda", soda => new SumQuantity.OfMass(soda))
        ),
        new("powder-for-soda", "How much baking powder in place of soda?", SumTopic.Chemical, [Soda, Available], values =>
            SumResult.Of(
                BakingPowder.InPlaceOfSoda(values.Of(Soda), values.Of(Available).Share),
                "baking powder",
                powder => new SumQuantity.OfMass(powder)
            )
        ),
        new("soda-for-powder", "How much soda in place of baking powder?", SumTopic.Chemical, [Powder, Available], values =>
            SumResult.Of(
                BakingPowder.SodaInPlaceOf(values.Of(Powder), values.Of(Available).Share),
                "baking soda",
                soda => new SumQuantity.OfMass(soda)
            )
        ),
        new("powder-strength", "How strong is a powder of one's own?", SumTopic.Chemical, [Soda, Acid, Kind, Filler], values =>
            SumResult.Of(
                BakingPowder.AvailableShare(values.Of(Soda), values.Of(Acid), values.Of(Kind), values.Of(Filler)),
                "available carbon dioxide",
                share => new SumQuantity.OfPercent(PerHundred.Of(share))
            )
        ),
        new("carbonate-exchange", "How much of another carbonate?", SumTopic.Chemical, [Instead, Amount, With], values =>
            SumResult.Of(values.Of(With).InPlaceOf(values.Of(Instead), values.Of(Amount)), "in its place", mass => new SumQuantity.OfMass(
                mass
            ))
        ),
        new("self-rising-flour", "Does a self-rising flour hold the rule?", SumTopic.Chemical, [Flour, Soda, Acid, Kind, Salt], values =>
            SumResult.Of(SelfRisingFlour.Of(values.Of(Flour), values.Of(Soda), values.Of(Acid), values.Of(Kind), values.Of(Salt)), Rule)
        ),
    ];

    private static IReadOnlyList<SumLine> Leftovers(Neutralization mixed) =>
        [
            new("soda left", new SumQuantity.OfMass(mixed.SodaLeft)),
            new("acid left", new SumQuantity.OfMass(mixed.AcidLeft)),
            new("carbon dioxide", new SumQuantity.OfMass(mixed.CarbonDioxide)),
            new("more of it by heat, from the soda left", new SumQuantity.OfMass(mixed.CarbonDioxideByHeat)),
        ];

    private static IReadOnlyList<SumLine> Rule(SelfRisingFlour flour) =>
        [
            new("carbon dioxide, of the mixture", new SumQuantity.OfPercent(PerHundred.Of(flour.CarbonDioxideShare))),
            new(
                $"gas enough, {PerHundred.Of(SelfRisingFlour.MinimumCarbonDioxideShare):0.0} % or more",
                new SumQuantity.OfTruth(flour.HasGasEnough)
            ),
            new("acid and soda, of the flour", new SumQuantity.OfPercent(PerHundred.Of(flour.LeaveningPerFlour))),
            new(
                $"within the limit of {PerHundred.Of(SelfRisingFlour.MaximumLeaveningPerFlour):0.0} %",
                new SumQuantity.OfTruth(flour.IsWithinLimit)
            ),
        ];
}
