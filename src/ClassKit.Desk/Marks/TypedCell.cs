namespace ClassKit.Desk.Marks;

/// <summary>A cell of a table of marks, as a form asks for it: points, and a word to choose beside them or in their place.</summary>
/// <param name="Points">What is typed; empty for none.</param>
/// <param name="Word">The word; empty for none.</param>
public sealed record TypedCell(string Points, string Word)
{
    private const string Late = "late";

    /// <summary>What stands in place of a mark.</summary>
    public static IReadOnlyList<string> InPlace { get; } = ["absent", "excused", "not due"];

    /// <summary>What can be chosen where points are typed.</summary>
    public static IReadOnlyList<string> Words { get; } = [Late, .. InPlace];

    /// <summary>A cell taken apart; what has no such word in it stays as it is typed.</summary>
    public static TypedCell Of(string cell)
    {
        ArgumentNullException.ThrowIfNull(cell);
        var text = cell.Trim();
        if (InPlace.FirstOrDefault(word => word.Equals(text, StringComparison.OrdinalIgnoreCase)) is { } known)
            return new("", known);
        return text.EndsWith(" " + Late, StringComparison.OrdinalIgnoreCase)
            ? new(text[..^(Late.Length + 1)].TrimEnd(), Late)
            : new(text, "");
    }

    /// <summary>The cell; where points and a word contradict each other both stand there, so that the table's reader says so.</summary>
    public string Text =>
        Word.Length == 0 || Points.EndsWith(Word, StringComparison.OrdinalIgnoreCase) ? Points : $"{Points} {Word}".Trim();
}
