using ClassKit.Exercises.Authoring;

namespace ClassKit.Exercises.Layout;

/// <summary>
/// Where everything stands in the practice workbooks of a set of exercises: the same cells and numbers for every student who has an
/// exercise.
/// </summary>
/// <remarks>
/// Three anchors let a grader find a cell again in a returned workbook: its defined name, the tag in its row's first column,
/// and its place as dealt.
/// </remarks>
public sealed class PracticeLayout
{
    private PracticeLayout(StartPlan start, IReadOnlyList<ExerciseLayout> exercises) => (Start, Exercises) = (start, exercises);

    /// <summary>Where the first sheet says whose workbook it is.</summary>
    public StartPlan Start { get; }

    /// <summary>The exercises, in order.</summary>
    public IReadOnlyList<ExerciseLayout> Exercises { get; }

    /// <summary>Lays out exercises in the order given.</summary>
    /// <exception cref="ArgumentException">Two cells would have the same defined name.</exception>
    /// <param name="exercises">The exercises.</param>
    /// <param name="plan">How; null for <see cref="PracticePlan.Usual"/>.</param>
    public static PracticeLayout For(IReadOnlyList<Exercise> exercises, PracticePlan? plan = null)
    {
        ArgumentNullException.ThrowIfNull(exercises);
        if (FirstNameClash(exercises) is { } clash)
            throw new ArgumentException($"Two cells would be named '{clash}': rename an exercise, given or part.", nameof(exercises));
        plan ??= PracticePlan.Usual;
        var layouts = new List<ExerciseLayout>();
        foreach (var exercise in exercises)
            layouts.Add(new(exercise, layouts.Count + 1, plan, plan.OneSheet ? layouts.LastOrDefault() : null));
        return new(plan.Start, layouts);
    }

    /// <summary>The layout of some of the exercises; sheets, cells and numbers stay what they are for the class.</summary>
    /// <param name="exercises">Their ids.</param>
    public PracticeLayout Only(IReadOnlySet<string> exercises)
    {
        ArgumentNullException.ThrowIfNull(exercises);
        return exercises.Count == Exercises.Count
            ? this
            : new(Start, [.. Exercises.Where(layout => exercises.Contains(layout.Exercise.Id))]);
    }

    /// <summary>A defined name that two givens or parts would share, or null: for checking content before it is laid out.</summary>
    public static string? FirstNameClash(IReadOnlyList<Exercise> exercises)
    {
        ArgumentNullException.ThrowIfNull(exercises);
        var taken = new HashSet<string>(StringComparer.OrdinalIgnoreCase);
        return exercises
            .SelectMany(exercise =>
                exercise
                    .Givens.Select(given => given.Id)
                    .Concat(exercise.Parts.Select(part => part.Id))
                    .Select(id => Naming.DefinedName(exercise.Id, id))
            )
            .FirstOrDefault(name => !taken.Add(name));
    }

    /// <summary>The layout of one exercise.</summary>
    /// <exception cref="KeyNotFoundException">No such exercise.</exception>
    public ExerciseLayout Of(string exercise) =>
        Exercises.FirstOrDefault(layout => layout.Exercise.Id == exercise)
        ?? throw new KeyNotFoundException($"No exercise '{exercise}' in this layout.");
}
