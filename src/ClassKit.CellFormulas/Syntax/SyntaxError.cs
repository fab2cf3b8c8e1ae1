namespace ClassKit.CellFormulas.Syntax;

/// <summary>Why a text is no cell formula: where it stops making sense, what stands there and what could stand there instead.</summary>
/// <param name="Text">The whole text, with its leading <c>=</c>.</param>
/// <param name="Position">The index into <paramref name="Text"/> of the first character that does not fit, from 0.</param>
/// <param name="Length">How many characters do not fit; 0 at the end of the text.</param>
/// <param name="Found">What stands there.</param>
/// <param name="Expected">What could stand there.</param>
public sealed record SyntaxError(string Text, int Position, int Length, SyntaxFound Found, SyntaxExpected Expected)
{
    private const int Margin = 60;

    /// <summary>The same with another text quoted in place of the one that was typed.</summary>
    public SyntaxError Under(Func<string, string> instead)
    {
        ArgumentNullException.ThrowIfNull(instead);
        var found = Found with { Text = instead(Found.Text) };

        // How long something was may tell whose name it was.
        return this with
        {
            Text = instead(Text),
            Found = found,
            Length = found.Text.Length,
        };
    }

    /// <summary>The text and a caret under the place; a long text is shown around the place only.</summary>
    public override string ToString()
    {
        var from = Math.Max(0, Position - Margin);
        var to = Math.Min(Text.Length, Position + Math.Max(Length, 1) + Margin);
        var head = from > 0 ? "..." : "";
        var tail = to < Text.Length ? "..." : "";
        var line = head + OnOneLine(Text[from..to]) + tail;
        var indent = new string(' ', head.Length + Position - from);
        var carets = new string('^', Math.Clamp(Length, 1, Margin));
        return $"{line}\n{indent}{carets}";
    }

    private static string OnOneLine(string text) => string.Create(text.Length, text, static (line, from) =>
        {
            for (var at = 0; at < line.Length; at++)
                line[at] = char.IsControl(from[at]) ? ' ' : from[at];
        });
}
