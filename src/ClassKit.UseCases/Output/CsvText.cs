using System.Globalization;
using CsvHelper;
using CsvHelper.Configuration;

namespace ClassKit.UseCases.Output;

/// <summary>How ClassKit writes comma-separated values.</summary>
/// <remarks>
/// RFC 4180. A cell that a spreadsheet could take for a formula gets an apostrophe before it, since names come from outside.
/// </remarks>
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
                foreach (var cell in row)
                    csv.WriteField(cell);
                csv.NextRecord();
            }
        }
        return text.ToString();
    }

    /// <summary>The rows as they are, without an apostrophe of ours: whoever makes them has seen to it.</summary>
    public static string Plain(params IEnumerable<IEnumerable<string>> rows)
    {
        using var stream = new MemoryStream();
        Plain(stream, rows);
        return System.Text.Encoding.UTF8.GetString(stream.ToArray());
    }

    /// <summary>The same into a stream, which stays open, a row at a time.</summary>
    public static void Plain(Stream stream, IEnumerable<IEnumerable<string>> rows)
    {
        using var text = new StreamWriter(stream, leaveOpen: true);
        using var csv = new CsvWriter(text, Style with { InjectionOptions = InjectionOptions.None });
        foreach (var row in rows)
        {
            foreach (var cell in row)
                csv.WriteField(cell);
            csv.NextRecord();
        }
    }

    /// <summary>
    /// The rows of a file as they are written by <see cref="Plain(Stream, IEnumerable{IEnumerable{string}})"/>, the header among them, read
    /// as they are asked for; the file is closed after the last.
    /// </summary>
    public static IEnumerable<IReadOnlyList<string>> Rows(Stream file)
    {
        using var text = new StreamReader(file);
        using var csv = new CsvParser(text, Style with { BadDataFound = null });
        while (csv.Read())
            yield return [.. csv.Record ?? []];
    }

    /// <summary>Points as tables write them, to a hundredth.</summary>
    public static string Points(decimal points) => points.ToString("0.##", CultureInfo.InvariantCulture);
}
