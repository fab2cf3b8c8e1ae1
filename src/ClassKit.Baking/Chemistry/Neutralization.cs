namespace ClassKit.Baking;

/// <summary>What becomes of soda and acid that meet: whichever is short sets the gas, and the rest stays in the crumb.</summary>
/// <param name="SodaUsed">Neutralised.</param>
/// <param name="SodaLeft">Tastes soapy and browns the crust; in the oven's heat it gives half of its gas and turns into washing soda.</param>
/// <param name="AcidUsed">Neutralised.</param>
/// <param name="AcidLeft">Tastes sour.</param>
/// <param name="CarbonDioxide">From the neutralised soda only.</param>
/// <param name="CarbonDioxideByHeat">More gas that the soda left over can give if the crumb gets hot for long enough.</param>
public sealed record Neutralization(Mass SodaUsed, Mass SodaLeft, Mass AcidUsed, Mass AcidLeft, Mass CarbonDioxide, Mass CarbonDioxideByHeat)
{
    /// <summary>The steps, with what was put together given again.</summary>
    public Explanation Explain(LeaveningAcid kind)
    {
        ArgumentNullException.ThrowIfNull(kind);
        var soda = SodaUsed + SodaLeft;
        var acid = AcidUsed + AcidLeft;
        return new(
            $"Baking soda and {kind.Name}",
            [
                new("soda that the acid neutralises", "acid × neutralising value / 100", $"{Figures.Grams(acid, 3)} × {Figures.Show(kind.NeutralizingValue, 1)} / 100", Figures.Grams(kind.SodaFor(acid), 3)),
                new("soda used", "the lesser of soda and that", $"{Figures.Grams(soda, 3)} and {Figures.Grams(kind.SodaFor(acid), 3)}", Figures.Grams(SodaUsed, 3)),
                new("soda left", "soda - soda used", $"{Figures.Grams(soda, 3)} - {Figures.Grams(SodaUsed, 3)}", Figures.Grams(SodaLeft, 3)),
                new("acid left", "acid - 100 × soda used / neutralising value", $"{Figures.Grams(acid, 3)} - {Figures.Grams(AcidUsed, 3)}", Figures.Grams(AcidLeft, 3)),
                new("carbon dioxide", "soda used × 44.009 / 84.006", $"{Figures.Grams(SodaUsed, 3)} × {Figures.Show(BakingSoda.CarbonDioxideByAcid, 4)}", Figures.Grams(CarbonDioxide, 3)),
            ],
            $"Neutralising value: {kind.Source}. Soda left over gives half of its gas when heated, and only in part before the crumb sets: it is not counted.");
    }

    /// <summary>Puts soda and acid together; both not negative.</summary>
    public static Neutralization Of(Mass soda, Mass acid, LeaveningAcid kind)
    {
        ArgumentNullException.ThrowIfNull(kind);
        var matched = kind.SodaFor(acid);
        var used = matched < soda ? matched : soda;
        var acidUsed = kind.For(used);
        return new(used, soda - used, acidUsed, acid - acidUsed, used * BakingSoda.CarbonDioxideByAcid, (soda - used) * BakingSoda.CarbonDioxideByHeat);
    }
}
