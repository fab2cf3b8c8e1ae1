using System.Globalization;
using CsvHelper;
using CsvHelper.Configuration;

namespace ClassKit.UseCases.Output;

/// <summary>How ClassKit writes comma-separated values.</summary>
/// <remarks>RFC 4180. A cell that a spreadsheet could take for a formula gets an apostrophe before it, since names come from outside.</remarks>
internal static class CsvText
{
    private static readonly CsvConfiguration Style = new(CultureInfo.InvariantCulture)
    {
        NewLine = "\r\n",
        InjectionOptions = InjectionOptions.Escape,
        // Any line break in a cell, and not only the one that ends our lines: the names of returned files may hold one.
        ShouldQuote = cell => ConfigurationFunctions.ShouldQuote(cell) || cell.Field.AsSpan().ContainsAny('\r', '\n'),
    };

    /// <summary>The rows, the header among them.</summary>
    public static string Of(params IEnumerable<IEnumerable<string>> rows)
    {
        using var text = new StringWriter(CultureInfo.InvariantCulture);
        using (var csv = new CsvWriter(text, Style))
        {
            foreach (var row in rows)
            {
                foreach (var cell in row) csv.WriteField(cell);
                csv.NextRecord();
            }
        }
        return text.ToString();
    }

    /// <summary>Points as tables write them, to a hundredth.</summary>
    public static string Points(decimal points) => points.ToString("0.##", CultureInfo.InvariantCulture);
}
