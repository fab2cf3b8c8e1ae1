using ClassKit.Baking.Cooking;
using ClassKit.Baking.Ingredients;
using ClassKit.Baking.Quantities;

namespace ClassKit.Lessons.Packs;

/// <summary>Whether breads are one dough that only its leavening changes, so that a difference in height is due to it.</summary>
public static class OneDough
{
    /// <summary>
    /// In percent of the flour: what the flour of a starter and the starch of a powder shift the water by, and hardly more.
    /// </summary>
    private const double Near = 1;

    private static readonly IngredientRole[] Compared = [IngredientRole.Egg, IngredientRole.Fat, IngredientRole.Salt, IngredientRole.Sugar];

    /// <summary>
    /// True if egg, fat, salt, sugar and all water are alike, and so are the mass of a piece and what cooks it. Kneading and time may
    /// differ: a leavening asks for its own.
    /// </summary>
    public static bool Is(IReadOnlyList<LeaveningComparison> breads)
    {
        ArgumentNullException.ThrowIfNull(breads);
        return breads.Count > 1 && breads.Skip(1).All(other => AreAlike(breads[0], other));
    }

    private static bool AreAlike(LeaveningComparison one, LeaveningComparison other) =>
        Array.TrueForAll(Compared, role => Math.Abs(one.Percent(role) - other.Percent(role)) <= Near)
        && Math.Abs(one.AllWaterPercent - other.AllWaterPercent) <= Near
        && one.Bread.PieceMass == other.Bread.PieceMass
        && Heats(one).SequenceEqual(Heats(other));

    private static IEnumerable<(CookingWay?, Temperature?)> Heats(LeaveningComparison bread) =>
        bread.Bread.Steps.Where(step => step.IsCooking).Select(step => (step.Way, step.Temperature));
}
