using ClassKit.Baking.Chemistry;
using ClassKit.Baking.Explanations;
using ClassKit.Baking.Formulas;
using ClassKit.Baking.Quantities;

namespace ClassKit.Baking.GasBudgets;

/// <summary>The carbon dioxide that soda, acids and baking powder of a dough make.</summary>
internal sealed class ChemicalSupply
{
    private readonly Mass _ammonia;
    private readonly IReadOnlyList<Powder> _powders;
    private readonly Band<Mass> _matched;

    /// <summary>What meets the soda, by typical values.</summary>
    private readonly IReadOnlyList<(string From, Mass Acid, LeaveningAcid Kind)> _acids;

    public ChemicalSupply(BakersFormula formula, Mass dough, GasBudgetSettings settings)
    {
        // Potassium bicarbonate meets the same acids, gram-molecule for gram-molecule.
        Soda = Of("baking_soda") + Of("potassium_bicarbonate") * (MolarMass.SodiumBicarbonate / MolarMass.PotassiumBicarbonate);
        _ammonia = Of("ammonium_bicarbonate");
        _powders =
        [
            .. new[]
            {
                new Powder(Of("baking_powder"), settings.PowderShare, settings.PowderBenchShare),
                new Powder(Of("low_sodium_powder"), settings.PowderShare, settings.PowderBenchShare),
                new Powder(Of("phosphate_powder"), settings.PowderShare, PowderRelease.Phosphate.BenchShare),
                new Powder(Of("self_rising_flour"), SelfRisingFlour.UsualShare, PowderRelease.Phosphate.BenchShare),
            }.Where(powder => powder.Mass.Grams > 0),
        ];
        var tartar = LeaveningAcid.CreamOfTartar.SodaMatching(Of("cream_of_tartar"));
        _matched = formula
            .Lines.Where(line => line.Ingredient.LacticAcidShare is not null)
            .Aggregate(new Band<Mass>(tartar, tartar, tartar), (sum, line) =>
                sum.With(line.Ingredient.LacticAcidShare!.Value, (soda, acidity) =>
                    soda + LeaveningAcid.LacticAcid.SodaMatching(dough * (line.Percent / formula.TotalPercent * acidity))
                )
            );

        _acids =
        [
            .. Of("cream_of_tartar") is { Grams: > 0 } cream
                ? [("cream of tartar", cream, LeaveningAcid.CreamOfTartar)]
                : (IEnumerable<(string, Mass, LeaveningAcid)>)[],
            .. formula
                .Lines.Where(line => line.Ingredient.LacticAcidShare is not null)
                .Select(line =>
                    (
                        $"the lactic acid of {line.Ingredient.Name}",
                        dough * (line.Percent / formula.TotalPercent * line.Ingredient.LacticAcidShare!.Value.Typical),
                        LeaveningAcid.LacticAcid
                    )
                ),
        ];

        Mass Of(string id) =>
            dough * (formula.Lines.Where(line => line.Ingredient.Id == id).Sum(line => line.Percent) / formula.TotalPercent);
    }

    /// <summary>Potassium bicarbonate as the soda that it stands for.</summary>
    public Mass Soda { get; }

    public bool HasSoda => Soda.Grams > 0;

    public bool HasPowder => _powders.Count > 0;

    public bool HasAmmonia => _ammonia.Grams > 0;

    /// <summary>
    /// All of it, in the heat. The ammonia beside it is not counted: a moist crumb keeps it, and only thin dry goods let it go.
    /// </summary>
    public Band<AmountOfSubstance> AmmoniaGas => Same(CarbonDioxide.AmountIn(_ammonia * Carbonate.BakersAmmonia.CarbonDioxideByHeat));

    /// <summary>The soda that the acids of the dough neutralise; the powder's own acid is spoken for by its own soda.</summary>
    private Band<Mass> Used => _matched.Map(matched => matched < Soda ? matched : Soda);

    /// <summary>
    /// At once, since buttermilk's acid is dissolved already; soda left over gives gas only slowly and late, and is not counted.
    /// </summary>
    public Band<AmountOfSubstance> SodaGas => Used.Map(used => CarbonDioxide.AmountIn(used * BakingSoda.CarbonDioxideByAcid));

    public Band<AmountOfSubstance> PowderGas => Sum(_powders.Select(powder => powder.Gas));

    public Band<AmountOfSubstance> PowderBenchGas => Sum(_powders.Select(powder => powder.BenchGas));

    /// <summary>Most where the acid is least.</summary>
    public Band<Mass> SodaLeft => new(Soda - Used.High, Soda - Used.Typical, Soda - Used.Low);

    public Explanation ExplainSoda() =>
        new(
            "Carbon dioxide from soda and acid",
            [
                .. _acids.Select(acid => new ExplainedStep(
                    $"soda that {acid.From} neutralises",
                    "acid × neutralising value / 100",
                    $"{Figures.Grams(acid.Acid)} × {Figures.Exact(acid.Kind.NeutralizingValue)} / 100",
                    Figures.Grams(acid.Kind.SodaMatching(acid.Acid))
                )),
                new(
                    "soda that the acids neutralise",
                    "their sum",
                    _acids.Count == 0 ? "0 g" : string.Join(" + ", _acids.Select(acid => Figures.Grams(acid.Kind.SodaMatching(acid.Acid)))),
                    Figures.Grams(_matched.Typical)
                ),
                new(
                    "soda used",
                    "the lesser of soda and that",
                    $"the lesser of {Figures.Grams(Soda)} and {Figures.Grams(_matched.Typical)}",
                    Figures.Grams(Used.Typical)
                ),
                new(
                    "carbon dioxide",
                    "soda used × 44.009 / 84.006",
                    $"{Figures.Grams(Used.Typical)} × 44.009 / 84.006",
                    Figures.Grams(Used.Typical * BakingSoda.CarbonDioxideByAcid)
                ),
                new(
                    "soda left",
                    "soda - soda used",
                    $"{Figures.Grams(Soda)} - {Figures.Grams(Used.Typical)}",
                    Figures.Grams(Soda - Used.Typical)
                ),
            ],
            "The acidity of cultured milk is a range; baking powder brings its own acid for its own soda."
        );

    public Explanation ExplainPowder() =>
        new(
            "Carbon dioxide from baking powder",
            [
                .. _powders.SelectMany(powder =>
                    (ExplainedStep[])
                        [
                            new(
                                "carbon dioxide",
                                "powder × available share",
                                $"{Figures.Grams(powder.Mass)} × {Figures.Percent(powder.Share.Typical)}",
                                Figures.Grams(powder.Mass * powder.Share.Typical)
                            ),
                            new(
                                "before the oven",
                                "carbon dioxide × share on the bench",
                                $"{Figures.Grams(powder.Mass * powder.Share.Typical)} × {Figures.Percent(powder.Bench.Typical)}",
                                Figures.Grams(powder.Mass * (powder.Share.Typical * powder.Bench.Typical))
                            ),
                        ]
                ),
            ],
            string.Join(
                " ",
                _powders.Select(powder =>
                    $"Available carbon dioxide {Figures.Show(PerHundred.Of(powder.Share.Low))} % to {Figures.Show(PerHundred.Of(powder.Share.High))} % of the powder, of which some {Figures.Show(PerHundred.Of(powder.Bench.Low))} % to {Figures.Show(PerHundred.Of(powder.Bench.High))} % on the bench."
                )
            )
        );

    public Explanation ExplainAmmonia() =>
        new(
            "Carbon dioxide from baker's ammonia",
            [
                new(
                    "carbon dioxide",
                    "ammonium bicarbonate × 44.009 / 79.055",
                    $"{Figures.Grams(_ammonia)} × 44.009 / 79.055",
                    Figures.Grams(_ammonia * Carbonate.BakersAmmonia.CarbonDioxideByHeat)
                ),
            ],
            "Heat alone breaks all of it down, above some 40 °C to 60 °C (from memory). Beside the carbon dioxide 17.031 / 79.055 of it becomes ammonia, which a moist crumb keeps and tastes of: for thin dry goods only."
        );

    private static Band<AmountOfSubstance> Same(AmountOfSubstance amount) => new(amount, amount, amount);

    private static Band<AmountOfSubstance> Sum(IEnumerable<Band<AmountOfSubstance>> parts) =>
        parts.Aggregate(default(Band<AmountOfSubstance>), (sum, part) => sum.With(part, (left, right) => left + right));

    /// <summary>One powder of the dough: how much gas it has, and how much of that comes on the bench.</summary>
    private sealed record Powder(Mass Mass, Band<double> Share, Band<double> Bench)
    {
        public Band<AmountOfSubstance> Gas => Share.Map(share => CarbonDioxide.AmountIn(Mass * share));

        public Band<AmountOfSubstance> BenchGas => Gas.With(Bench, (gas, share) => gas * share);
    }
}
