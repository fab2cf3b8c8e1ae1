namespace ClassKit.Baking;

/// <summary>A baker's formula scaled to a mass of dough and rounded for a scale.</summary>
/// <param name="Formula">The formula scaled.</param>
/// <param name="Lines">Every line of the formula, in its order.</param>
/// <param name="Resolution">What the scale can show; every weighed mass is a multiple of it.</param>
public sealed record Batch(BakersFormula Formula, IReadOnlyList<BatchLine> Lines, Mass Resolution)
{
    /// <summary>The dough as the exact masses sum to it.</summary>
    public Mass Exact => Lines.Aggregate(default(Mass), (sum, line) => sum + line.Exact);

    /// <summary>The dough as the weighed masses sum to it.</summary>
    public Mass Weighed => Lines.Aggregate(default(Mass), (sum, line) => sum + line.Weighed);
}
