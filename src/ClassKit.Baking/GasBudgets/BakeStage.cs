using ClassKit.Baking.Cooking;
using ClassKit.Baking.HeatBalances;
using ClassKit.Baking.Quantities;

namespace ClassKit.Baking.GasBudgets;

/// <summary>A stretch of a formula's way from the mixing bowl to the end of baking.</summary>
/// <param name="Name">A word or two: <c>First rise</c>.</param>
/// <param name="Minutes">How long it takes; not negative.</param>
/// <param name="Temperature">Of the dough on the bench, of what surrounds or carries it in the heat: air, steam, fat, water or a hot
/// plate.</param>
/// <param name="InOven">Which of the two: true in an oven and wherever else it is cooked.</param>
/// <param name="Degasses">True if the dough is stirred down, punched or moulded as the stage begins: its bubbles go back to what they were
/// after mixing.</param>
public sealed record BakeStage(string Name, Band<double> Minutes, Temperature Temperature, bool InOven, bool Degasses = false)
{
    /// <summary>
    /// How the dough comes to the room's temperature meanwhile; null where it is kept at its own. <see cref="Temperature"/> is then the
    /// mean.
    /// </summary>
    public RoomWarming? Warming { get; init; }

    /// <summary>As warm as the dough is once a stage on the bench is over, by typical times.</summary>
    public Temperature End => At(Minutes.Typical);

    /// <summary>As warm as the dough is some minutes into a stage on the bench.</summary>
    /// <param name="minutes">Not negative.</param>
    public Temperature At(double minutes) => Warming?.After(minutes) ?? Temperature;

    /// <summary>How it is cooked, of a stage in the heat.</summary>
    public CookingWay Way { get; init; } = CookingWay.Oven;
}
