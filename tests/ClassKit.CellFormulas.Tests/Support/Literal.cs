using System.Globalization;
using ClassKit.CellFormulas.Values;

namespace ClassKit.CellFormulas.Tests.Support;

/// <summary>
/// Values as tests and case files write them: <c>12.5</c>, <c>"text"</c> or <c>'text</c>, <c>TRUE</c>, <c>#N/A</c>, nothing for a blank.
/// </summary>
internal static class Literal
{
    public static CellValue Read(string text)
    {
        if (text.Length == 0)
            return CellValue.Blank;
        if (text[0] == '\'')
            return CellValue.FromText(text[1..]);
        if (text.Length > 1 && text[0] == '"' && text[^1] == '"')
            return CellValue.FromText(text[1..^1].Replace("\"\"", "\"", StringComparison.Ordinal));
        if (CellErrorText.TryParse(text, out var error))
            return CellValue.FromError(error);
        if (text is "TRUE" or "FALSE")
            return CellValue.FromLogical(text == "TRUE");
        return double.TryParse(text, NumberStyles.Float, CultureInfo.InvariantCulture, out var number)
            ? CellValue.FromNumber(number)
            : CellValue.FromText(text);
    }

    public static string Write(CellValue value) =>
        value.IsText ? $"\"{value.Text.Replace("\"", "\"\"", StringComparison.Ordinal)}\"" : value.ToString();

    /// <summary>The same kind and content; numbers to 15 digits or so.</summary>
    public static bool Same(CellValue a, CellValue b, double tolerance = 1e-14) =>
        a.IsNumber && b.IsNumber
            ? a.Number == b.Number || Math.Abs(a.Number - b.Number) <= tolerance * Math.Max(Math.Abs(a.Number), Math.Abs(b.Number))
            : a == b;
}
