using ClassKit.Content.Diagnostics;
using ClassKit.Content.Sources;

namespace ClassKit.Content.Sheets;

/// <summary>
/// The tables in a file: one of a text file, one a sheet of a workbook. Lines of text that begin with <c># </c> are somebody's remarks.
/// </summary>
internal static class SheetTables
{
    /// <summary>At least one, which may be empty; null with the reason noted.</summary>
    public static IReadOnlyList<SheetTable>? Read(Source source, ProblemList problems)
    {
        if (source.IsFile && WorkbookTables.IsWorkbook(source))
            return WorkbookTables.Read(source, problems);
        if (TableLetters.Read(source, problems) is not var (text, guessed))
            return null;
        return [OfText(text, problems) with { GuessedLetters = guessed }];
    }

    /// <summary>The table that a text is.</summary>
    public static SheetTable OfText(string text, ProblemList problems)
    {
        var separator = CsvReader.SeparatorOf(text);
        return new([
            .. CsvReader
                .Read(text, separator, problems)
                .Where(record => !record.IsBlank && !record.Fields[0].StartsWith(CsvReader.Remark, StringComparison.Ordinal)),
        ])
        {
            Separator = separator,
        };
    }
}
