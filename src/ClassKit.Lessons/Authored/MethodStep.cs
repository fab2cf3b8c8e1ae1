using ClassKit.Baking.Cooking;
using ClassKit.Baking.Quantities;
using ClassKit.BenchPlans.Classes;
using ClassKit.Exercises.Authoring;

namespace ClassKit.Lessons.Authored;

/// <summary>One step of a method.</summary>
/// <param name="Name">A word or two: <c>Proof</c>.</param>
/// <param name="Text">What to do.</param>
/// <param name="MinMinutes">The shortest it takes; 0 or more.</param>
/// <param name="MaxMinutes">The longest; at least <paramref name="MinMinutes"/>.</param>
/// <param name="Temperature">At which it happens, if that matters: of the oven, the place or the mix.</param>
/// <param name="Way">What it is cooked in or over; null on the bench.</param>
public sealed record MethodStep(
    string Name,
    TextTemplate Text,
    int MinMinutes,
    int MaxMinutes,
    Temperature? Temperature,
    CookingWay? Way = null
)
{
    /// <summary>True if it happens in the oven and <see cref="Temperature"/> is what the dial says.</summary>
    public bool InOven => Way == CookingWay.Oven;

    /// <summary>True in an oven, a steamer, hot fat, or wherever else it is cooked.</summary>
    public bool IsCooking => Way is not null;

    /// <summary>True where it is done to a bread for the first time; what is reheated was baked before.</summary>
    public bool IsBaking => IsCooking && !Work.Reheats;

    /// <summary>True in a freezer of either kind.</summary>
    public bool IsFreezing => Work.Uses.Any(use => use.Kind == EquipmentKind.Freezer || use.Kind == EquipmentKind.BlastFreezer);

    /// <summary>
    /// How long one piece takes of it, where they go through one after another; null where all are at it together, for the whole of the
    /// step.
    /// </summary>
    public PieceTime? Each { get; init; }

    /// <summary>What it takes at the bench, for the bench plan.</summary>
    public StepWork Work { get; init; } = StepWork.Usual;
}
