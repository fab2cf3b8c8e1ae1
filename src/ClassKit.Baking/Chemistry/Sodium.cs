namespace ClassKit.Baking;

/// <summary>The sodium that salt, soda and baking powder bring. What milk, eggs and the rest hold by nature is not counted.</summary>
public static class Sodium
{
    /// <summary>In a mass of dough.</summary>
    public static Mass In(BakersFormula formula, Mass dough)
    {
        ArgumentNullException.ThrowIfNull(formula);
        var total = formula.TotalPercent;
        return total > 0
            ? dough * (formula.Lines.Sum(line => line.Percent * (line.Ingredient.SodiumShare ?? 0)) / total)
            : default;
    }
}
