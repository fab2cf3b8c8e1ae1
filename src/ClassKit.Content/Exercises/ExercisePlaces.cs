using ClassKit.Content.Diagnostics;
using ClassKit.Content.Sources;
using ClassKit.Exercises.Guarantees;

namespace ClassKit.Content.Exercises;

/// <summary>Where the pieces of an exercise stand in its file, for messages about an exercise that was read without a problem.</summary>
public sealed class ExercisePlaces
{
    private readonly string[] _lines;

    private ExercisePlaces(string[] lines) => _lines = lines;

    /// <summary>The places in a file that <see cref="ExerciseReader"/> has read, which the library does not read again.</summary>
    public static ExercisePlaces Of(Source source)
    {
        ArgumentNullException.ThrowIfNull(source);
        return new(SourceFile.Read(source, new ProblemList(source.Shown))?.Split('\n') ?? []);
    }

    /// <summary>The line, counted from 1, that a broken rule points to; null for the exercise as a whole.</summary>
    public int? LineOf(Culprit culprit)
    {
        ArgumentNullException.ThrowIfNull(culprit);
        return culprit switch
        {
            { Given: { } given } => First(0, line => line.StartsWith('|') && line.Trim('|').Split('|')[0].Trim() == given),
            { Part: { } part, Misconception: { } misconception } => First(First(0, IsHeading("Part", part)) ?? 0, IsHeading("Misconception", misconception)),
            { Part: { } part } => First(0, IsHeading("Part", part)),
            { Constraint: { } constraint } => First(0, line => line.Contains($"`{constraint}`", StringComparison.Ordinal)),
            _ => null,
        };
    }

    private static Predicate<string> IsHeading(string word, string name) => line =>
        line.StartsWith('#') && line.TrimStart('#').Split(':', 2) is [var first, var second]
        && first.Trim().Equals(word, StringComparison.OrdinalIgnoreCase) && second.Trim() == name;

    private int? First(int from, Predicate<string> fits) => Array.FindIndex(_lines, from, fits) is var index and >= 0 ? index + 1 : null;
}
