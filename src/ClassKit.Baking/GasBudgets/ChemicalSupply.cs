using ClassKit.Baking.Chemistry;
using ClassKit.Baking.Explanations;
using ClassKit.Baking.Formulas;
using ClassKit.Baking.Ingredients;
using ClassKit.Baking.Quantities;

namespace ClassKit.Baking.GasBudgets;

/// <summary>The carbon dioxide that soda, acids and baking powder of a dough make.</summary>
internal sealed class ChemicalSupply
{
    private readonly Mass _ammonia;
    private readonly IReadOnlyList<Powder> _powders;

    /// <summary>What meets the soda.</summary>
    private readonly IReadOnlyList<Acid> _acids;

    public ChemicalSupply(BakersFormula formula, Mass dough, GasBudgetSettings settings)
    {
        // Potassium bicarbonate meets the same acids, gram-molecule for gram-molecule.
        Soda =
            Sum(RaisingKind.Soda) + Sum(RaisingKind.PotassiumBicarbonate) * (MolarMass.SodiumBicarbonate / MolarMass.PotassiumBicarbonate);
        _ammonia = Sum(RaisingKind.Ammonia);
        _powders =
        [
            .. formula
                .Lines.Where(line => line.Percent > 0 && line.Ingredient.Raises is { Kind: RaisingKind.Powder })
                .Select(line => new Powder(
                    Of(line),
                    line.Ingredient.Raises!.GasShare ?? settings.PowderShare,
                    line.Ingredient.Raises.BenchShare ?? settings.PowderBenchShare
                )),
        ];
        _acids =
        [
            .. formula
                .Lines.Where(line => line.Percent > 0 && line.Ingredient.NeutralizingValue is not null)
                .Select(line => new Acid(
                    line.Ingredient.Name.ToLowerInvariant(),
                    new(Of(line), Of(line), Of(line)),
                    line.Ingredient.NeutralizingValue!.Value
                )),
            .. formula
                .Lines.Where(line => line.Ingredient.LacticAcidShare is not null)
                .Select(line => new Acid(
                    $"the lactic acid of {line.Ingredient.Name}",
                    line.Ingredient.LacticAcidShare!.Value.Map(share => Of(line) * share),
                    LeaveningAcid.LacticAcid.NeutralizingValue
                )),
        ];

        Mass Of(FormulaLine line) => dough * (line.Percent / formula.TotalPercent);

        Mass Sum(RaisingKind kind) =>
            dough * (formula.Lines.Where(line => line.Ingredient.Raises?.Kind == kind).Sum(line => line.Percent) / formula.TotalPercent);
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

    /// <summary>The soda that all acids together would neutralise.</summary>
    private Band<Mass> Matched => _acids.Aggregate(default(Band<Mass>), (sum, acid) => sum.With(acid.Soda, (left, right) => left + right));

    /// <summary>The soda that the acids of the dough neutralise; the powder's own acid is spoken for by its own soda.</summary>
    private Band<Mass> Used => Matched.Map(matched => matched < Soda ? matched : Soda);

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
                    $"{Figures.Grams(acid.Amount.Typical)} × {Figures.Exact(acid.NeutralizingValue)} / 100",
                    Figures.Grams(acid.Soda.Typical)
                )),
                new(
                    "soda that the acids neutralise",
                    "their sum",
                    _acids.Count == 0 ? "0 g" : string.Join(" + ", _acids.Select(acid => Figures.Grams(acid.Soda.Typical))),
                    Figures.Grams(Matched.Typical)
                ),
                new(
                    "soda used",
                    "the lesser of soda and that",
                    $"the lesser of {Figures.Grams(Soda)} and {Figures.Grams(Matched.Typical)}",
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

    /// <summary>One acid of the dough, and the soda that it neutralises.</summary>
    /// <param name="From">What it is, in the middle of a sentence.</param>
    /// <param name="Amount">How much of it.</param>
    /// <param name="NeutralizingValue">Grams of soda for 100 g of it.</param>
    private sealed record Acid(string From, Band<Mass> Amount, double NeutralizingValue)
    {
        public Band<Mass> Soda => Amount.Map(amount => amount * PerHundred.Share(NeutralizingValue));
    }

    /// <summary>One powder of the dough: how much gas it has, and how much of that comes on the bench.</summary>
    private sealed record Powder(Mass Mass, Band<double> Share, Band<double> Bench)
    {
        public Band<AmountOfSubstance> Gas => Share.Map(share => CarbonDioxide.AmountIn(Mass * share));

        public Band<AmountOfSubstance> BenchGas => Gas.With(Bench, (gas, share) => gas * share);
    }
}
