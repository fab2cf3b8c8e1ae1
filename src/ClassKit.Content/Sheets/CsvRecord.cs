namespace ClassKit.Content.Sheets;

/// <summary>One record of a comma-separated file.</summary>
/// <param name="Line">Where it begins.</param>
/// <param name="Fields">Its fields, without quotes.</param>
internal sealed record CsvRecord(int Line, IReadOnlyList<string> Fields)
{
    /// <summary>True for a line with nothing on it.</summary>
    public bool IsBlank => Fields.All(string.IsNullOrWhiteSpace);
}
