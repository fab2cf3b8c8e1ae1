namespace ClassKit.Exercises.Cohorts;

/// <summary>Finds the rows of a table that are one student's.</summary>
public static class StudentRows
{
    private const string Heading = "student";

    /// <summary>The rows in which a column of students says the student. Only where another student stands in a column, or it is headed so, is it one of students: an ingredient may be called as somebody is.</summary>
    /// <param name="cells">The table, cell by cell; what is above and beside it may be among them.</param>
    /// <param name="sought">The student.</param>
    public static IReadOnlySet<int> Of(IReadOnlyList<(int Row, int Column, string Text)> cells, SoughtStudent sought)
    {
        ArgumentNullException.ThrowIfNull(cells);
        ArgumentNullException.ThrowIfNull(sought);
        var columns = cells.Where(cell => sought.IsAnother(cell.Text) || cell.Text.Trim().Equals(Heading, StringComparison.OrdinalIgnoreCase)).Select(cell => cell.Column).ToHashSet();
        return cells.Where(cell => columns.Contains(cell.Column) && sought.Is(cell.Text)).Select(cell => cell.Row).ToHashSet();
    }
}
