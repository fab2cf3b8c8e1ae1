using ClassKit.Baking.Quantities;
using ClassKit.Lessons.Classes;

namespace ClassKit.Workbooks.Requisitions;

/// <summary>The unit of mass on a requisition.</summary>
/// <param name="Symbol">As in the heads: <c>g</c>.</param>
/// <param name="Larger">What prices are compared by: <c>A kilogram</c>.</param>
/// <param name="InLarger">How many go into that.</param>
/// <param name="Of">Grams in this unit.</param>
internal sealed record SheetMass(string Symbol, string Larger, int InLarger, Func<double, double> Of)
{
    /// <summary>Grams; ounces in a class that has only US units.</summary>
    public static SheetMass For(UnitSystem units) =>
        units == UnitSystem.UnitedStates
            ? new("oz", "A pound", 16, grams => Mass.FromGrams(grams).Ounces)
            : new("g", "A kilogram", 1000, grams => grams);
}
