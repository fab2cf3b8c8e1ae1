using System.Globalization;
using ClassKit.CellFormulas.Values;

namespace ClassKit.Workbooks.Returned.OpenDocument;

/// <summary>
/// Error values as OpenDocument spreadsheets show them: the standard names, and the numbers that LibreOffice and its kin show for the rest.
/// </summary>
internal static class OpenDocumentErrors
{
    private const string Numbered = "Err:";

    /// <summary>The error that a text stands for; false if it is none.</summary>
    public static bool TryParse(string? text, out CellError error)
    {
        error = CellError.Value;
        if (text is null)
            return false;
        if (CellErrorText.TryParse(text, out error))
            return true;
        if (!text.StartsWith(Numbered, StringComparison.Ordinal))
            return false;
        if (
            !int.TryParse(text.AsSpan(Numbered.Length), NumberStyles.None, CultureInfo.InvariantCulture, out var number)
            || number is < 500 or > 599
        )
            return false;

        // The errors that these numbers become where LibreOffice writes an .xlsx.
        error = number switch
        {
            502 or 504 or (>= 508 and <= 511) or 519 or 522 => CellError.Value,
            503 => CellError.Number,
            521 => CellError.Null,
            524 => CellError.Reference,
            525 or 530 or 531 => CellError.Name,
            532 => CellError.DivideByZero,
            _ => CellError.NotAvailable,
        };
        return true;
    }
}
