using ClassKit.CellFormulas.Sheets;

namespace ClassKit.CellFormulas.Printing;

/// <summary>Which sheet names must stand between single quotes.</summary>
internal static class SheetNames
{
    /// <summary>True unless the name is a plain word that cannot be taken for a cell, a number or a logical.</summary>
    public static bool NeedsQuotes(string sheet)
    {
        if (sheet.Length == 0 || !(char.IsAsciiLetter(sheet[0]) || sheet[0] == '_'))
            return true;
        foreach (var c in sheet)
        {
            if (!char.IsAsciiLetterOrDigit(c) && c != '_')
                return true;
        }

        return CellAddress.TryParse("", sheet, out _) || IsColumn(sheet) || bool.TryParse(sheet, out _);
    }

    // A short word could be a column, and R or C a row or column of the other reference style.
    private static bool IsColumn(string sheet) => sheet.Length <= 3 && sheet.All(char.IsAsciiLetter);
}
