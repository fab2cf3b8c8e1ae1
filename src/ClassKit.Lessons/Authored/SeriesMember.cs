using ClassKit.Exercises.Authoring;

namespace ClassKit.Lessons.Authored;

/// <summary>A bread once more, with something in it changed on purpose, to hold it against the bread as it is written.</summary>
/// <param name="FormulaId">The bread.</param>
/// <param name="Name">What is other about it, in a word or two: <c>Held 20 min</c>.</param>
/// <param name="Text">What it is to show.</param>
/// <param name="Changes">In what it differs; at least one.</param>
public sealed record SeriesMember(string FormulaId, string Name, TextTemplate Text, IReadOnlyList<SeriesChange> Changes)
{
    /// <summary>Its id: the bread's, and its name in small letters and digits.</summary>
    public string Id =>
        $"{FormulaId}_{string.Join('_', new string([.. Name.Select(letter => char.IsAsciiLetterOrDigit(letter) ? char.ToLowerInvariant(letter) : ' ')]).Split(' ', StringSplitOptions.RemoveEmptyEntries))}";
}
