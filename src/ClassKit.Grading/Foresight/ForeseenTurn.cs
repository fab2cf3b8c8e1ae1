using ClassKit.CellFormulas.Formulas;
using ClassKit.Exercises.Authoring;
using ClassKit.Grading.Findings.Edits;

namespace ClassKit.Grading.Foresight;

/// <summary>A wrong turn that students may take and that an exercise does not list.</summary>
/// <param name="Exercise">The exercise.</param>
/// <param name="Part">The part.</param>
/// <param name="Formula">What it computes, over the exercise's names.</param>
/// <param name="Edits">What it has otherwise than the key.</param>
/// <param name="Hidden">For which share of variants its number is taken for the right one, 0 to 1.</param>
/// <param name="Distance">How far its number lies from the right one in the middle of the variants, as a share of the right one; infinite
/// where that is 0.</param>
public sealed record ForeseenTurn(
    Exercise Exercise,
    Part Part,
    CellFormula Formula,
    IReadOnlyList<KeyEdit> Edits,
    double Hidden,
    double Distance
)
{
    /// <summary>
    /// From here on the numbers do not tell it from the key: a tenth of the variants, as where two listed wrong turns meet.
    /// </summary>
    public const double MostHidden = 0.1;

    /// <summary>True if a student may take it and be told that all is right.</summary>
    public bool IsHidden => Hidden > MostHidden;
}
