namespace ClassKit.UseCases.Exporting;

/// <summary>The tables of a term.</summary>
/// <param name="Files">Each file's text by its name, the manifest first.</param>
/// <param name="Results">How many results there are.</param>
public sealed record TermTables(IReadOnlyList<(string Name, string Text)> Files, int Results)
{
    /// <summary>The titles of works that are left out: nothing of them has been graded, so that nobody knows their points.</summary>
    public IReadOnlyList<string> Ungraded { get; init; } = [];
}
