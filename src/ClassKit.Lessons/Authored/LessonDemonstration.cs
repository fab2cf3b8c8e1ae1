using ClassKit.Baking.Formulas;
using ClassKit.BenchPlans.Classes;
using ClassKit.Exercises.Authoring;

namespace ClassKit.Lessons.Authored;

/// <summary>What the instructor shows to all teams at once.</summary>
/// <param name="Name">A few words: <c>Filling hot tins</c>.</param>
/// <param name="Minutes">How long it takes; above 0.</param>
/// <param name="FormulaId">The bread it belongs to; empty if it belongs to none.</param>
/// <param name="StepName">The step of that bread that no team begins before; empty if it belongs to none.</param>
/// <param name="Text">What is shown.</param>
public sealed record LessonDemonstration(string Name, int Minutes, string FormulaId, string StepName, TextTemplate Text)
{
    /// <summary>What to set out for it.</summary>
    public IReadOnlyList<string> Tools { get; init; } = [];

    /// <summary>What is weighed out for it, besides what the teams weigh.</summary>
    public IReadOnlyList<WeighedIngredient> Ingredients { get; init; } = [];

    /// <summary>
    /// The bread whose batter it mixes without what leavens it, as a control, a portion for each team; null if it mixes none. What that
    /// takes is weighed out besides.
    /// </summary>
    public string? ControlOf { get; init; }

    /// <summary>The shared equipment that it occupies.</summary>
    public IReadOnlyList<EquipmentCount> Uses { get; init; } = [];

    /// <summary>What a team has to have finished, because it is shown on what came of it; null if it needs nobody's bread.</summary>
    public LessonStep? After { get; init; }

    /// <summary>What it bakes; null if it bakes nothing.</summary>
    public DemonstrationBake? Bake { get; init; }
}
