using ClassKit.CellFormulas.Formulas;
using ClassKit.Exercises.Authoring;

namespace ClassKit.Exercises.Guarantees;

/// <summary>The place in an exercise that a broken rule points to; nothing but nulls points to the exercise as a whole.</summary>
/// <param name="Given">A given's id.</param>
/// <param name="Part">A part's id.</param>
/// <param name="Misconception">The id of one of that part's misconceptions.</param>
/// <param name="Constraint">A constraint's text.</param>
public sealed record Culprit(string? Given = null, string? Part = null, string? Misconception = null, string? Constraint = null)
{
    internal static Culprit Of(Given given) => new(Given: given.Id);

    internal static Culprit Of(Part part) => new(Part: part.Id);

    internal static Culprit Of(Part part, Misconception misconception) => new(Part: part.Id, Misconception: misconception.Id);

    internal static Culprit Of(CellFormula constraint) => new(Constraint: constraint.Text);
}
