namespace ClassKit.Exercises.Cohorts;

/// <summary>Finds the rows of a table that are one student's.</summary>
public static class StudentRows
{
    private const string Heading = "student";

    /// <summary>Words in the heading of a column of ids, which may be bare numbers as points are.</summary>
    private static readonly string[] OfIds = ["id", "ids", "student", "number", "no", "nr"];

    /// <summary>
    /// The rows in which a column of students says the student. Only where another student stands in a column, or it is headed so, is it
    /// one of students: an ingredient may be called as somebody is, and points may be somebody's number.
    /// </summary>
    /// <param name="cells">The table, cell by cell; what is above and beside it may be among them.</param>
    /// <param name="sought">The student.</param>
    public static IReadOnlySet<int> Of(IReadOnlyList<(int Row, int Column, string Text)> cells, SoughtStudent sought)
    {
        ArgumentNullException.ThrowIfNull(cells);
        ArgumentNullException.ThrowIfNull(sought);
        var ids = cells
            .Where(cell => !IsNumber(cell.Text) && Words(cell.Text).Any(word => OfIds.Contains(word, StringComparer.OrdinalIgnoreCase)))
            .Select(cell => cell.Column)
            .ToHashSet();
        bool Counts((int Row, int Column, string Text) cell) => !IsNumber(cell.Text) || ids.Contains(cell.Column);
        var columns = cells
            .Where(cell =>
                (sought.IsAnother(cell.Text) && Counts(cell)) || cell.Text.Trim().Equals(Heading, StringComparison.OrdinalIgnoreCase)
            )
            .Select(cell => cell.Column)
            .ToHashSet();
        return cells
            .Where(cell => columns.Contains(cell.Column) && sought.Is(cell.Text) && Counts(cell))
            .Select(cell => cell.Row)
            .ToHashSet();
    }

    private static bool IsNumber(string text) =>
        text.Any(char.IsAsciiDigit) && text.All(letter => char.IsAsciiDigit(letter) || char.IsWhiteSpace(letter) || letter is '.' or ',');

    private static string[] Words(string text) =>
        text.Split([' ', '_', '-', '.', ':'], StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries);
}
