using ClassKit.Content.Diagnostics;
using ClassKit.Content.Sources;

namespace ClassKit.Content.Outline;

/// <summary>One row of a table.</summary>
/// <param name="Line">Where it stands.</param>
/// <param name="Cells">Its cells by the heading of their column.</param>
internal sealed record TableRow(int Line, IReadOnlyDictionary<string, string> Cells)
{
    /// <summary>A cell that may be empty.</summary>
    public Located Optional(string column) => new(Cells.GetValueOrDefault(column, ""), Line);

    /// <summary>A cell that must hold something, or null with the reason noted.</summary>
    public Located? Required(string column, ProblemList problems)
    {
        if (Optional(column) is { Text.Length: > 0 } cell)
            return cell;
        if (Cells.ContainsKey(column))
            problems.Add(Line, $"The cell in the column `{column}` is empty", "Fill it in.");
        return null;
    }
}
