using AngleSharp.Dom;

namespace ClassKit.LessonPacks.Tests.Samples;

/// <summary>The observation sheet as a team reads it: a column for each bread and a row for each measure, in front and behind.</summary>
internal static class ObservationSheet
{
    /// <summary>The breads on a side, from left to right.</summary>
    public static IReadOnlyList<string> Breads(this IElement table) =>
        [.. table.QuerySelectorAll("thead th[scope='colgroup']").Select(head => head.Words())];

    /// <summary>The cells of a bread in each row of a table, by the row's heading.</summary>
    public static IReadOnlyList<(string Row, IReadOnlyList<IElement> Cells)> Of(this IElement table, string bread) =>
        [
            .. table
                .QuerySelectorAll("tbody tr")
                .Select(row => (row.QuerySelector("th")!.Words(), (IReadOnlyList<IElement>)[.. Under(table, row, bread)])),
        ];

    /// <summary>What is expected of a bread, by measure: one text for each of its columns.</summary>
    public static IReadOnlyDictionary<string, IReadOnlyList<string>> Expected(this IDocument page, string bread) =>
        page.QuerySelector(".expects")!
            .Of(bread)
            .ToDictionary(row => row.Row, row => (IReadOnlyList<string>)[.. row.Cells.Select(cell => cell.Words())]);

    /// <summary>Counted by what cells span, as a browser lays them out.</summary>
    private static IEnumerable<IElement> Under(IElement table, IElement row, string bread)
    {
        var (from, at) = (0, 0);
        foreach (var head in table.QuerySelectorAll("thead th[scope='colgroup']").TakeWhile(head => head.Words() != bread))
            from += Span(head);
        var to = from + Span(table.QuerySelectorAll("thead th[scope='colgroup']").Single(head => head.Words() == bread));
        foreach (var cell in row.QuerySelectorAll("td"))
        {
            if (at >= from && at < to)
                yield return cell;
            at += Span(cell);
        }
    }

    private static int Span(IElement cell) =>
        int.Parse(cell.GetAttribute("colspan") ?? "1", System.Globalization.CultureInfo.InvariantCulture);
}
