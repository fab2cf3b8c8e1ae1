using System.Globalization;
using AngleSharp.Dom;

namespace ClassKit.LessonPacks.Tests.Samples;

/// <summary>What stands on a page, as a reader takes it.</summary>
internal static class PageText
{
    /// <summary>Runs of white space are single spaces, no-break and thin spaces too.</summary>
    public static string Words(this INode node) =>
        string.Join(' ', node.TextContent.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));

    /// <summary>Grams of "852 g", "1.092 kg" or "6.70 oz".</summary>
    public static decimal Grams(this INode cell)
    {
        var words = cell.TextContent.Replace("\u202F", "", StringComparison.Ordinal).Split('\u00A0');
        return decimal.Parse(words[0], CultureInfo.InvariantCulture)
            * words[1].Trim() switch
            {
                "kg" => 1000m,
                "oz" => 28.349523125m,
                _ => 1m,
            };
    }

    public static decimal Number(this INode cell) =>
        decimal.Parse(cell.TextContent.Replace("\u202F", "", StringComparison.Ordinal), CultureInfo.InvariantCulture);

    /// <summary>The rows of the tables in a section: everything after its heading up to the next one of the same rank.</summary>
    public static IEnumerable<IElement> RowsBelow(this IDocument page, string headingId)
    {
        var heading = page.QuerySelector("#" + headingId) ?? throw new InvalidOperationException($"There is no heading {headingId}.");
        for (
            var next = heading.NextElementSibling;
            next is not null && next.LocalName != heading.LocalName && next.QuerySelector(heading.LocalName) is null;
            next = next.NextElementSibling
        )
            foreach (var row in next.QuerySelectorAll("tbody tr"))
                yield return row;
    }

    /// <summary>What stands in a row under a heading of its table.</summary>
    public static string Under(this IElement row, string heading) =>
        row.Children[row.Closest("table")!.QuerySelectorAll("thead th").Select(head => head.Words()).ToList().IndexOf(heading)].Words();

    /// <summary>The minute that stands under a heading.</summary>
    public static int MinuteUnder(this IElement row, string heading) => Clock(row.Under(heading));

    /// <summary>
    /// Minutes since the beginning: "1:05" is 65, "−0:05" five minutes before; what the clock on the wall says may stand behind it.
    /// </summary>
    public static int Clock(string text)
    {
        var parts = text.Trim().Split(' ')[0].TrimStart('−').Split(':');
        return (int.Parse(parts[0], CultureInfo.InvariantCulture) * 60 + int.Parse(parts[1], CultureInfo.InvariantCulture))
            * (text.Trim()[0] == '−' ? -1 : 1);
    }
}
