namespace ClassKit.Workbooks.Packages;

/// <summary>
/// The order of parts in a package: content types and relationships first, as readers that stream expect, the rest by name.
/// </summary>
internal sealed class PartOrder : IComparer<string>
{
    public static PartOrder Instance { get; } = new();

    public int Compare(string? x, string? y)
    {
        var byRank = Rank(x).CompareTo(Rank(y));
        return byRank != 0 ? byRank : string.CompareOrdinal(x, y);
    }

    private static int Rank(string? part) =>
        part switch
        {
            "[Content_Types].xml" => 0,
            "_rels/.rels" => 1,
            "xl/workbook.xml" => 2,
            _ => 3,
        };
}
