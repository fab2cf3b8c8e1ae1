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
