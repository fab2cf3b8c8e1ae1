using ClassKit.CellFormulas.Sheets;

namespace ClassKit.Grading.Finding;

/// <summary>Where the cells of one exercise are now.</summary>
/// <param name="Givens">By given id.</param>
/// <param name="Answers">By part id.</param>
/// <param name="MovedTo">The sheet, if it is another than the one that was dealt and named; else null.</param>
internal sealed record FoundCells(
    IReadOnlyDictionary<string, CellAddress> Givens,
    IReadOnlyDictionary<string, CellAddress> Answers,
    string? MovedTo
)
{
    /// <summary>True if all of them stand where they were dealt.</summary>
    public bool AreWhereDealt { get; init; }
}
