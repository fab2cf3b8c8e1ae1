namespace ClassKit.Lessons;

/// <summary>What the instructor shows to all teams at once.</summary>
/// <param name="Name">A few words: <c>Filling hot tins</c>.</param>
/// <param name="Minutes">How long it takes; above 0.</param>
/// <param name="FormulaId">The bread it belongs to; empty if it belongs to none.</param>
/// <param name="StepName">The step of that bread that no team begins before; empty if it belongs to none.</param>
/// <param name="Text">What is shown.</param>
public sealed record LessonDemonstration(string Name, int Minutes, string FormulaId, string StepName, string Text)
{
    /// <summary>What to set out for it.</summary>
    public IReadOnlyList<string> Tools { get; init; } = [];
}
