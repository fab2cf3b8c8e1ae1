namespace ClassKit.UseCases.Inspecting;

/// <summary>The formula cells of one sheet.</summary>
/// <param name="Name">The sheet's name.</param>
/// <param name="Cells">By row, then column.</param>
public sealed record InspectedSheet(string Name, IReadOnlyList<InspectedCell> Cells);
