using System.Runtime.CompilerServices;
using ClassKit.CellFormulas.Syntax;
using ClassKit.Exercises.Authoring;

namespace ClassKit.Wording.Mending;

/// <summary>
/// What is to be changed in the formulas that were written for one part. Students go wrong together, and of every answer a page, a gradebook
/// and a file for programs tell the same, so that a formula is looked through once. Can be asked from several threads.
/// </summary>
/// <remarks>What is found hangs on the exercise and the formula alone, so that it is the same in whatever order formulas come.</remarks>
internal sealed class PartMending
{
    /// <summary>In a class of thousands who write no two formulas alike, those that come later are looked through each time.</summary>
    private const int Most = 500;

    private static readonly ConditionalWeakTable<Exercise, ConditionalWeakTable<Part, PartMending>> Known = [];

    private readonly Lock _lock = new();
    private readonly KeyTrial _trial;
    private readonly OwnChanges _changes;
    private readonly Dictionary<string, OwnReading?> _readings = new(StringComparer.Ordinal);

    private PartMending(Exercise exercise, Part part) => (_trial, _changes) = (new(exercise, part), new(exercise, part));

    /// <summary>That of a part, for as long as its exercise is there.</summary>
    public static PartMending Of(Exercise exercise, Part part) =>
        Known.GetValue(exercise, _ => []).GetValue(part, asked => new(exercise, asked));

    /// <summary>The one change that makes a formula the key; null where there is none, or where it would be the whole formula.</summary>
    /// <param name="written">The formula, over the exercise's names.</param>
    public OwnReading? Change(Flat written)
    {
        var spelled = written.Spelled;
        lock (_lock)
        {
            if (_readings.TryGetValue(spelled, out var known))
                return known;
            var found = _changes.Of(written);
            if (_readings.Count < Most)
                _readings.Add(spelled, found);
            return found;
        }
    }

    /// <summary>True if a formula over the exercise's names is the key by what it gives.</summary>
    public bool IsKey(FormulaNode tree)
    {
        lock (_lock)
            return _trial.IsKey(tree);
    }
}
