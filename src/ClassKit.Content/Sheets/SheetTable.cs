namespace ClassKit.Content.Sheets;

/// <summary>The rows of a table, as text.</summary>
/// <param name="Records">Those with something in them, each with its line or row.</param>
internal sealed record SheetTable(IReadOnlyList<CsvRecord> Records)
{
    /// <summary>What stands between fields, for advice.</summary>
    public char Separator { get; init; } = ',';

    /// <summary>The workbook's sheet; null for text.</summary>
    public string? Sheet { get; init; }

    /// <summary>True if the letters were guessed.</summary>
    public bool GuessedLetters { get; init; }

    /// <summary>The rows that do not show and were left out.</summary>
    public int HiddenRows { get; init; }
}
