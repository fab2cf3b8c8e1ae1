using System.Globalization;
using System.Text;

namespace ClassKit.Cli.Reporting;

/// <summary>
/// Shows to a terminal the characters that would otherwise command it: what a file or a sheet is called was chosen by others.
/// </summary>
/// <remarks>
/// Line ends and tabs stay. Isolates of direction stay too, which are ours and only shield what stands around them (Unicode Standard Annex
/// #9, 2.4).
/// </remarks>
internal sealed class VisibleWriter(TextWriter terminal) : TextWriter(CultureInfo.InvariantCulture)
{
    public override Encoding Encoding => terminal.Encoding;

    public override void Write(char value)
    {
        if (Commands(value))
            terminal.Write(string.Create(CultureInfo.InvariantCulture, $"‹U+{(int)value:X4}›"));
        else
            terminal.Write(value);
    }

    public override void Write(string? value)
    {
        if (value is null || !value.Any(Commands))
            terminal.Write(value);
        else
            foreach (var character in value)
                Write(character);
    }

    public override void WriteLine(string? value)
    {
        Write(value);
        terminal.WriteLine();
    }

    public override void Flush() => terminal.Flush();

    private static bool Commands(char character) =>
        (char.IsControl(character) && character is not ('\n' or '\r' or '\t'))
        || character is '\u061C' or '\u200E' or '\u200F' or (>= '\u202A' and <= '\u202E') or '\u2066' or '\u2067';
}
