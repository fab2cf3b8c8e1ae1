using ClassKit.Exercises.Authoring;

namespace ClassKit.Lessons.Authored;

/// <summary>A bread's place in a series that the teams of a class share out.</summary>
/// <param name="OfId">The id of the bread as it is written.</param>
/// <param name="Name">What is other about this one; empty for the bread as it is written.</param>
/// <param name="Text">What it is to show; empty for the bread as it is written.</param>
/// <param name="Changes">In what it differs; none for the bread as it is written.</param>
/// <param name="Teams">The teams that make it, by their numbers from 1; at least one.</param>
public sealed record SeriesPlace(string OfId, string Name, TextTemplate Text, IReadOnlyList<SeriesChange> Changes, IReadOnlyList<int> Teams)
{
    /// <summary>True if it stands or rises longer than the bread as written, so that the dough lets gas go.</summary>
    public bool IsPastItsTime { get; init; }

    /// <summary>True for the bread against which the others are held.</summary>
    public bool IsAsWritten => Changes.Count == 0;
}
