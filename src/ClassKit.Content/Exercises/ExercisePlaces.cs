using ClassKit.Exercises.Guarantees;

namespace ClassKit.Content.Exercises;

/// <summary>Where the pieces of an exercise stand in its file, for messages about an exercise that was read without a problem.</summary>
public sealed class ExercisePlaces
{
    private readonly Dictionary<Culprit, int> _lines = [];

    /// <summary>The line, counted from 1, that a broken rule points to; null for the exercise as a whole.</summary>
    public int? LineOf(Culprit culprit)
    {
        ArgumentNullException.ThrowIfNull(culprit);
        return _lines.TryGetValue(culprit, out var line) ? line : null;
    }

    internal void Note(Culprit culprit, int line) => _lines.TryAdd(culprit, line);
}
