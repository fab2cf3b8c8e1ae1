using ClassKit.Baking.Formulas;
using ClassKit.Baking.Household;
using ClassKit.Baking.Quantities;

namespace ClassKit.Lessons.Cards;

/// <summary>One ingredient on a formula card.</summary>
/// <param name="Line">Percentage, exact and weighed mass.</param>
/// <param name="Household">The same in cups, spoons or eggs; null where none fits.</param>
/// <param name="PoundsAndOunces">The same on a US scale, to the quarter ounce; null below an ounce, where a quarter is too coarse.</param>
public sealed record CardLine(BatchLine Line, HouseholdMeasure? Household, string? PoundsAndOunces)
{
    internal static CardLine For(BatchLine line) => new(line, HouseholdMeasures.For(line.Ingredient, line.Exact), Ounces(line.Exact));

    internal static string? Ounces(Mass mass) => mass.Ounces < 1 ? null : Baking.Household.PoundsAndOunces.Show(mass);
}
