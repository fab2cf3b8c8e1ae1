using ClassKit.CellFormulas.Formulas;

namespace ClassKit.Exercises.Authoring;

/// <summary>A known wrong method and the words that set it right.</summary>
/// <param name="Id">Unique in its part.</param>
/// <param name="Formula">What the wrong method computes, over the same names as the key.</param>
/// <param name="Words">What to tell the student: one or two sentences, to them.</param>
public sealed record Misconception(string Id, CellFormula Formula, string Words)
{
    /// <summary>The formula as its author wrote it, over the exercise's steps; null if it uses none.</summary>
    public CellFormula? Written { get; init; }
}
