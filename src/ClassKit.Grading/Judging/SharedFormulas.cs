using System.Collections.Concurrent;
using ClassKit.CellFormulas.Formulas;

namespace ClassKit.Grading.Judging;

/// <summary>What is known of formulas that several students wrote.</summary>
internal sealed class SharedFormulas
{
    private readonly ConcurrentDictionary<string, IReadOnlyDictionary<string, string>> _dealtCells = new(StringComparer.Ordinal);

    /// <summary>What they were parsed to.</summary>
    public FormulaParses Parses { get; } = new();

    /// <summary>What they are over the names of exercises.</summary>
    public NamedFormulas Named { get; } = new();

    /// <summary>The cells of all that an exercise asks and tells, by its names, where they stand as they were dealt.</summary>
    /// <param name="exercise">The exercise's id.</param>
    /// <param name="cells">Tells them when asked first.</param>
    public IReadOnlyDictionary<string, string> DealtCells(string exercise, Func<IReadOnlyDictionary<string, string>> cells) =>
        _dealtCells.GetOrAdd(exercise, _ => cells());

    /// <summary>For which fresh inputs anything explains them.</summary>
    public Explanations Explanations { get; } = new();
}
