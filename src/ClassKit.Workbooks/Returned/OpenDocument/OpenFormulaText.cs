using System.Text;
using ClassKit.CellFormulas.Values;

namespace ClassKit.Workbooks.Returned.OpenDocument;

/// <summary>
/// Turns a formula as OpenDocument files store it into one as .xlsx files do: <c>of:=SUM([.C7:.C9];[$'Sheet one'.B2])</c> into
/// <c>SUM(C7:C9,'Sheet one'!B2)</c>.
/// </summary>
/// <remarks>
/// OASIS OpenFormula 1.3: references in brackets (5.8), semicolons between arguments, <c>;</c> and <c>|</c> in arrays (5.13), <c>!</c> and
/// <c>~</c> as reference operators (5.5.11).
/// </remarks>
internal static class OpenFormulaText
{
    private static readonly string[] Prefixes = ["of:", "oooc:"];

    /// <summary>Functions that go by other names there.</summary>
    private static readonly (string There, string Here)[] Renamed =
    [
        ("COM.MICROSOFT.", ""),
        ("ORG.LIBREOFFICE.", ""),
        ("ORG.OPENOFFICE.", ""),
        ("LEGACY.", ""),
    ];

    /// <summary>The formula without its leading <c>=</c>.</summary>
    public static string ToCellFormula(string stored)
    {
        var isOpen = true;
        if (stored.StartsWith("msoxl:", StringComparison.Ordinal))
            (stored, isOpen) = (stored["msoxl:".Length..], false);
        else if (Prefixes.FirstOrDefault(prefix => stored.StartsWith(prefix, StringComparison.Ordinal)) is { } prefix)
            stored = stored[prefix.Length..];
        // Two equals signs ask for a recalculation on load.
        stored = stored.TrimStart('=');
        return isOpen ? Convert(stored) : stored;
    }

    private static string Convert(string stored)
    {
        var text = new StringBuilder(stored.Length);
        var inArray = 0;
        for (var at = 0; at < stored.Length; at++)
        {
            switch (stored[at])
            {
                case '"':
                    var end = EndOfQuoted(stored, at, '"');
                    text.Append(stored, at, end - at);
                    at = end - 1;
                    break;
                case '[':
                    var close = EndOfReference(stored, at);
                    text.Append(Reference(stored[(at + 1)..close]));
                    at = close;
                    break;
                case '{':
                    inArray++;
                    text.Append('{');
                    break;
                case '}':
                    inArray--;
                    text.Append('}');
                    break;
                case ';':
                    text.Append(',');
                    break;
                case '|' when inArray > 0:
                    text.Append(';');
                    break;
                case '#' or 'E' when ErrorAt(stored, at) is var (error, length):
                    text.Append(CellErrorText.Of(error));
                    at += length - 1;
                    break;
                case '!':
                    text.Append(' ');
                    break;
                case '~':
                    text.Append(',');
                    break;
                default:
                    text.Append(stored[at]);
                    break;
            }
        }

        foreach (var (there, here) in Renamed)
            text.Replace(there, here);
        return text.ToString();
    }

    /// <summary>The error value that stands there as a constant; null if none does.</summary>
    private static (CellError Error, int Length)? ErrorAt(string text, int at)
    {
        if (at > 0 && (char.IsLetterOrDigit(text[at - 1]) || text[at - 1] is '_' or '.'))
            return null;
        var end = at + 1;
        while (end < text.Length && (char.IsLetterOrDigit(text[end]) || text[end] is '/' or '!' or '?' or ':'))
            end++;
        return OpenDocumentErrors.TryParse(text[at..end], out var error) ? (error, end - at) : null;
    }

    /// <summary>Inside the brackets: one cell or two, each with a sheet before its last dot or none.</summary>
    private static string Reference(string reference)
    {
        if (reference.StartsWith('#') || reference.EndsWith("#REF!", StringComparison.Ordinal))
            return "#REF!";
        var colon = IndexOutsideQuotes(reference, ':');
        if (colon < 0)
            return Cell(reference, withSheet: true);
        var (first, last) = (reference[..colon], reference[(colon + 1)..]);
        return Cell(first, withSheet: true) + ":" + Cell(last, withSheet: SheetOf(last) != SheetOf(first) && SheetOf(last).Length > 0);
    }

    private static string Cell(string cell, bool withSheet)
    {
        var sheet = SheetOf(cell);
        var place = cell[(IndexOutsideQuotes(cell, '.') + 1)..];
        return withSheet && sheet.Length > 0 ? $"{sheet}!{place}" : place;
    }

    /// <summary>
    /// The sheet, quoted as it stands there: <c>$'Sheet one'.C7</c>. A file name before it makes a link to another workbook.
    /// </summary>
    private static string SheetOf(string cell)
    {
        var dot = IndexOutsideQuotes(cell, '.');
        if (dot <= 0)
            return "";
        var sheet = cell[..dot].TrimStart('$');
        return IndexOutsideQuotes(sheet, '#') >= 0
            ? $"[1]{sheet[(IndexOutsideQuotes(sheet, '#') + 1)..].TrimStart('$').Trim('\'')}"
            : sheet;
    }

    private static int IndexOutsideQuotes(string text, char sought)
    {
        for (var at = 0; at < text.Length; at++)
        {
            if (text[at] == '\'')
                at = EndOfQuoted(text, at, '\'') - 1;
            else if (text[at] == sought)
                return at;
        }

        return -1;
    }

    private static int EndOfReference(string text, int at)
    {
        for (at++; at < text.Length && text[at] != ']'; at++)
        {
            if (text[at] == '\'')
                at = EndOfQuoted(text, at, '\'') - 1;
        }

        return Math.Min(at, text.Length);
    }

    /// <summary>The place after a quoted text; a doubled quote belongs to it.</summary>
    private static int EndOfQuoted(string text, int at, char quote)
    {
        for (at++; at < text.Length; at++)
        {
            if (text[at] != quote)
                continue;
            if (at + 1 < text.Length && text[at + 1] == quote)
                at++;
            else
                return at + 1;
        }

        return text.Length;
    }
}
