using System.Globalization;

namespace ClassKit.CellFormulas.Syntax;

/// <summary>Why a text is no cell formula: where it stops making sense, what stands there and what could stand there instead.</summary>
/// <param name="Text">The whole text, with its leading <c>=</c>.</param>
/// <param name="Position">The index into <paramref name="Text"/> of the first character that does not fit, from 0.</param>
/// <param name="Length">How many characters do not fit; 0 at the end of the text.</param>
/// <param name="Found">What stands there, in words.</param>
/// <param name="Expected">What could stand there, in words.</param>
public sealed record SyntaxError(string Text, int Position, int Length, string Found, string Expected)
{
    private const int Margin = 60;

    /// <summary>One sentence without the text.</summary>
    public string Message =>
        string.Create(CultureInfo.InvariantCulture, $"character {Position + 1}: found {Found}, expected {Expected}");

    /// <summary>The text, a caret under the place, and the sentence beside it; a long text is shown around the place only.</summary>
    public override string ToString()
    {
        var from = Math.Max(0, Position - Margin);
        var to = Math.Min(Text.Length, Position + Math.Max(Length, 1) + Margin);
        var head = from > 0 ? "..." : "";
        var tail = to < Text.Length ? "..." : "";
        var line = head + OnOneLine(Text[from..to]) + tail;
        var indent = new string(' ', head.Length + Position - from);
        var carets = new string('^', Math.Clamp(Length, 1, Margin));
        return $"{line}\n{indent}{carets} found {Found}, expected {Expected}";
    }

    private static string OnOneLine(string text) =>
        string.Create(text.Length, text, static (line, from) =>
        {
            for (var at = 0; at < line.Length; at++) line[at] = char.IsControl(from[at]) ? ' ' : from[at];
        });
}
