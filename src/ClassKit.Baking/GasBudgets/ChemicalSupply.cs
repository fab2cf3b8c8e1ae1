using ClassKit.Baking.Chemistry;
using ClassKit.Baking.Explanations;
using ClassKit.Baking.Formulas;
using ClassKit.Baking.Quantities;

namespace ClassKit.Baking.GasBudgets;

/// <summary>The carbon dioxide that soda, acids and baking powder of a dough make.</summary>
internal sealed class ChemicalSupply
{
    private readonly GasBudgetSettings _settings;
    private readonly Mass _soda;
    private readonly Mass _powder;
    private readonly Band<Mass> _matched;

    /// <summary>What meets the soda, by typical values.</summary>
    private readonly IReadOnlyList<(string From, Mass Acid, LeaveningAcid Kind)> _acids;

    public ChemicalSupply(BakersFormula formula, Mass dough, GasBudgetSettings settings)
    {
        _settings = settings;
        _soda = Of("baking_soda");
        _powder = Of("baking_powder");
        var tartar = LeaveningAcid.CreamOfTartar.SodaMatching(Of("cream_of_tartar"));
        _matched = formula.Lines
            .Where(line => line.Ingredient.LacticAcidShare is not null)
            .Aggregate(new Band<Mass>(tartar, tartar, tartar), (sum, line) => sum.With(
                line.Ingredient.LacticAcidShare!.Value,
                (soda, acidity) => soda + LeaveningAcid.LacticAcid.SodaMatching(dough * (line.Percent / formula.TotalPercent * acidity))));

        _acids =
        [
            .. Of("cream_of_tartar") is { Grams: > 0 } cream ? [("cream of tartar", cream, LeaveningAcid.CreamOfTartar)] : (IEnumerable<(string, Mass, LeaveningAcid)>)[],
            .. formula.Lines.Where(line => line.Ingredient.LacticAcidShare is not null).Select(line => (
                $"the lactic acid of {line.Ingredient.Name}", dough * (line.Percent / formula.TotalPercent * line.Ingredient.LacticAcidShare!.Value.Typical), LeaveningAcid.LacticAcid)),
        ];

        Mass Of(string id) => dough * (formula.Lines.Where(line => line.Ingredient.Id == id).Sum(line => line.Percent) / formula.TotalPercent);
    }

    public bool HasSoda => _soda.Grams > 0;

    public bool HasPowder => _powder.Grams > 0;

    /// <summary>The soda that the acids of the dough neutralise; the powder's own acid is spoken for by its own soda.</summary>
    private Band<Mass> Used => _matched.Map(matched => matched < _soda ? matched : _soda);

    /// <summary>At once, since buttermilk's acid is dissolved already; soda left over gives gas only slowly and late, and is not counted.</summary>
    public Band<AmountOfSubstance> SodaGas => Used.Map(used => CarbonDioxide.AmountIn(used * BakingSoda.CarbonDioxideByAcid));

    public Band<AmountOfSubstance> PowderGas => _settings.PowderShare.Map(share => CarbonDioxide.AmountIn(_powder * share));

    public Band<AmountOfSubstance> PowderBenchGas => PowderGas.With(_settings.PowderBenchShare, (gas, share) => gas * share);

    /// <summary>Most where the acid is least.</summary>
    public Band<Mass> SodaLeft => new(_soda - Used.High, _soda - Used.Typical, _soda - Used.Low);

    public Explanation ExplainSoda() => new(
        "Carbon dioxide from soda and acid",
        [
            .. _acids.Select(acid => new ExplainedStep(
                $"soda that {acid.From} neutralises", "acid × neutralising value / 100", $"{Figures.Grams(acid.Acid, 3)} × {Figures.Show(acid.Kind.NeutralizingValue)} / 100", Figures.Grams(acid.Kind.SodaMatching(acid.Acid), 3))),
            new("soda that the acids neutralise", "their sum", _acids.Count == 0 ? "0 g" : string.Join(" + ", _acids.Select(acid => Figures.Grams(acid.Kind.SodaMatching(acid.Acid), 3))), Figures.Grams(_matched.Typical, 3)),
            new("soda used", "the lesser of soda and that", $"the lesser of {Figures.Grams(_soda, 3)} and {Figures.Grams(_matched.Typical, 3)}", Figures.Grams(Used.Typical, 3)),
            new("carbon dioxide", "soda used × 44.009 / 84.006", $"{Figures.Grams(Used.Typical, 3)} × 44.009 / 84.006", Figures.Grams(Used.Typical * BakingSoda.CarbonDioxideByAcid, 3)),
            new("soda left", "soda - soda used", $"{Figures.Grams(_soda, 3)} - {Figures.Grams(Used.Typical, 3)}", Figures.Grams(_soda - Used.Typical, 3)),
        ],
        "The acidity of cultured milk is a range; baking powder brings its own acid for its own soda.");

    public Explanation ExplainPowder() => new(
        "Carbon dioxide from baking powder",
        [
            new("carbon dioxide", "powder × available share", $"{Figures.Grams(_powder, 3)} × {Figures.Percent(_settings.PowderShare.Typical)}", Figures.Grams(_powder * _settings.PowderShare.Typical, 3)),
            new("before the oven", "carbon dioxide × share on the bench", $"{Figures.Grams(_powder * _settings.PowderShare.Typical, 3)} × {Figures.Percent(_settings.PowderBenchShare.Typical)}", Figures.Grams(_powder * (_settings.PowderShare.Typical * _settings.PowderBenchShare.Typical), 3)),
        ],
        $"Available carbon dioxide {Figures.Show(PerHundred.Of(_settings.PowderShare.Low))} % to {Figures.Show(PerHundred.Of(_settings.PowderShare.High))} % of the powder, of which some {Figures.Show(PerHundred.Of(_settings.PowderBenchShare.Low))} % to {Figures.Show(PerHundred.Of(_settings.PowderBenchShare.High))} % on the bench.");
}
