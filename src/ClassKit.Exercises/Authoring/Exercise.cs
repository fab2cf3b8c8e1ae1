using ClassKit.CellFormulas.Formulas;
using ClassKit.Exercises.Pictures;

namespace ClassKit.Exercises.Authoring;

/// <summary>A problem with givens drawn at random under constraints, and one or more parts to answer.</summary>
/// <param name="Id">Lower-case letters, digits and underscores; see <see cref="Naming"/>.</param>
/// <param name="Title">A few words.</param>
/// <param name="Skill">The skill practised, such as <c>dough temperature</c>; statistics are grouped by it.</param>
/// <param name="Level">How guided it is.</param>
/// <param name="Minutes">How long a student is expected to take.</param>
/// <param name="Source">Where the method is published, or "common practice, no source".</param>
/// <param name="Problem">The text in Markdown; <c>{name}</c> stands for a given's value with its unit.</param>
/// <param name="Givens">What the student is told.</param>
/// <param name="Constraints">Cell formulas over givens and parts; every one must be TRUE of a variant.</param>
/// <param name="Parts">What is asked, in order; a key may use the ids of earlier parts.</param>
/// <param name="Hints">From gentle to plain.</param>
public sealed record Exercise(
    string Id,
    string Title,
    string Skill,
    ExerciseLevel Level,
    int Minutes,
    string Source,
    TextTemplate Problem,
    IReadOnlyList<Given> Givens,
    IReadOnlyList<CellFormula> Constraints,
    IReadOnlyList<Part> Parts,
    IReadOnlyList<string> Hints
)
{
    /// <summary>Between what the effort of every variant must lie; null for a band around what is usual for the exercise.</summary>
    public EffortBand? Effort { get; init; }

    /// <summary>Quantities on the way that are not asked, in order. Keys hold them worked in: see <see cref="Part.Written"/>.</summary>
    public IReadOnlyList<WorkingStep> Steps { get; init; } = [];

    /// <summary>A picture of the problem, for sheets and pages; null for none. A dealt record has none: workbooks show none.</summary>
    public Picture? Picture { get; init; }

    /// <summary>
    /// True if no answer depends on what is drawn, as where causes are matched to faults: other numbers then make no other problem.
    /// </summary>
    public bool HasOneAnswer()
    {
        var varying = Givens.Where(given => !given.IsConstant).Select(given => given.Id).ToHashSet(StringComparer.OrdinalIgnoreCase);
        return !Parts.Any(part => part.InWords is null && part.Key.Names.Any(varying.Contains));
    }
}
