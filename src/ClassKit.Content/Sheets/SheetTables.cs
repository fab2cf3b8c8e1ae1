using ClassKit.Content.Diagnostics;
using ClassKit.Content.Sources;

namespace ClassKit.Content.Sheets;

/// <summary>The tables in a file: one of a text file, one a sheet of a workbook. Lines of text that begin with <c># </c> are somebody's remarks.</summary>
internal static class SheetTables
{
    /// <summary>At least one, which may be empty; null with the reason noted.</summary>
    public static IReadOnlyList<SheetTable>? Read(Source source, ProblemList problems)
    {
        if (source.IsFile && WorkbookTables.IsWorkbook(source)) return WorkbookTables.Read(source, problems);
        if (TableLetters.Read(source, problems) is not var (text, guessed)) return null;
        var separator = CsvReader.SeparatorOf(text);
        return [new([.. CsvReader.Read(text, separator, problems).Where(record => !record.IsBlank && !record.Fields[0].StartsWith("# ", StringComparison.Ordinal))]) { Separator = separator, GuessedLetters = guessed }];
    }
}
