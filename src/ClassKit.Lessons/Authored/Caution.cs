using ClassKit.Exercises.Authoring;

namespace ClassKit.Lessons.Authored;

/// <summary>Something that can hurt someone.</summary>
/// <param name="Title">A word or two: <c>Hot steam</c>.</param>
/// <param name="Text">What to do about it.</param>
/// <param name="Source">Where that is published, or "common practice, no source".</param>
public sealed record Caution(string Title, TextTemplate Text, string Source)
{
    /// <summary>The hazard that a standing caution is there for; null of one that somebody wrote, whatever its title.</summary>
    public Hazard? Of { get; init; }

    /// <summary>
    /// The hazards whose standing cautions an authored one is printed in place of, because its author says so; none of most. What its words
    /// seem to say replaces nothing.
    /// </summary>
    public IReadOnlyList<Hazard> InPlaceOf { get; init; } = [];

    /// <summary>The rule in a few words, to be read from the last row; empty where nobody has written one.</summary>
    public string InShort { get; init; } = "";

    /// <summary>
    /// The rule as it stands on a card, where nobody reads for long: what to do, without why; empty where the text itself is no longer than
    /// that.
    /// </summary>
    public string OnACard { get; init; } = "";
}
