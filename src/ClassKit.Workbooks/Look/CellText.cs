using System.Text;
using System.Xml;
using ClosedXML.Excel;

namespace ClassKit.Workbooks.Look;

/// <summary>Puts text into cells so that it stays text.</summary>
internal static class CellText
{
    /// <summary>The most characters that a cell holds (ECMA-376 Part 1, 18.4.12, as programs have it).</summary>
    public const int MaxLength = 32_767;

    /// <summary>
    /// Writes a text. One that a program could take for a formula when the cell is edited or exported gets the text prefix,
    /// so that a student called <c>=HYPERLINK(...)</c> stays a name.
    /// </summary>
    public static IXLCell SetText(this IXLCell cell, string text)
    {
        var safe = Storable(text);
        if (safe.Length == 0)
            return cell;
        cell.SetValue(safe);
        cell.SetDataType(XLDataType.Text);
        if (LooksLikeFormula(safe))
            cell.Style.IncludeQuotePrefix = true;
        return cell;
    }

    /// <summary>True for a text that starts as a formula does, in any program that was ever seen to take it for one.</summary>
    public static bool LooksLikeFormula(string text) => text.Length > 0 && text[0] is '=' or '+' or '-' or '@' or '\t' or '\r';

    /// <summary>The text without the characters that XML 1.0 cannot hold, and no longer than a cell takes.</summary>
    internal static string Storable(string text)
    {
        var kept = new StringBuilder(text.Length);
        foreach (var rune in text.EnumerateRunes())
        {
            if (rune.Utf16SequenceLength == 2 || XmlConvert.IsXmlChar((char)rune.Value))
                kept.Append(rune.ToString());
            if (kept.Length >= MaxLength - 1)
                break;
        }

        return kept.ToString();
    }
}
