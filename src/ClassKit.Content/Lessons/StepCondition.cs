using ClassKit.BenchPlans.Classes;
using ClassKit.Lessons.Authored;
using ClassKit.Lessons.Cooking;

namespace ClassKit.Content.Lessons;

/// <summary>One thing that the brackets of a step say behind its duration.</summary>
/// <param name="Written">As it stands there.</param>
internal abstract record StepCondition(string Written)
{
    /// <summary>How many have their hands in it: <c>2 people</c>, <c>unattended</c>.</summary>
    internal sealed record Staffed(string Written, int People) : StepCondition(Written);

    /// <summary>A word that is true of the step or is not: <c>door shut</c>, <c>mixes</c>.</summary>
    internal sealed record Said(string Written, Func<StepWork, StepWork> Of) : StepCondition(Written);

    /// <summary>How long the dough may stand before the next step.</summary>
    internal sealed record Waits(string Written, WaitWindow Window) : StepCondition(Written);

    /// <summary>How long one piece takes of it.</summary>
    internal sealed record OneByOne(string Written, PieceTime Time) : StepCondition(Written);

    /// <summary>What it is cooked in, with what stands behind it: <c>oven 190 °C</c>.</summary>
    internal sealed record CookedIn(string Written, CookingPlace Place, string? Heat) : StepCondition(Written);

    /// <summary>Places of what it is cooked in: <c>2 steamer places</c>.</summary>
    internal sealed record Places(string Written, CookingPlace Of, int Count) : StepCondition(Written);

    /// <summary>Shared equipment that it occupies.</summary>
    internal sealed record Occupies(string Written, EquipmentCount Count) : StepCondition(Written);

    /// <summary>An ingredient that it brings to another temperature.</summary>
    internal sealed record Heats(string Written, IngredientHeat Heat) : StepCondition(Written);

    /// <summary>What is none of these, and so is to be a temperature.</summary>
    internal sealed record Degrees(string Written) : StepCondition(Written);
}
