using ClassKit.Content.Diagnostics;
using ClassKit.Content.FrontMatter;
using ClassKit.Content.Quantities;
using ClassKit.Lessons;

namespace ClassKit.Content.Lessons;

/// <summary>Reads the size of the cup or round tin that a piece bakes in: three keys, or none of them.</summary>
internal static class CupSize
{
    private static readonly string[] Keys = ["cup top", "cup bottom", "cup depth"];

    /// <summary>From a thimble to a sheet pan, in whatever unit is written.</summary>
    private static readonly Bounds Sizes = new(0, false, 1000);

    /// <summary>The cup; null where none is described, or with the reason noted.</summary>
    public static BakingCup? Read(Fields fields, ProblemList problems)
    {
        var there = Keys.Where(fields.Has).ToList();
        var sizes = there.Select(key => fields.Quantity(key, Dimensions.Millimetres, Sizes, 1)).ToList();
        if (there.Count == Keys.Length)
            return new(sizes[0], sizes[1], sizes[2]);
        if (there.Count > 0)
            problems.Add(fields.LineOf(there[0]), $"Of the cup only {string.Join(" and ", there.Select(key => $"`{key}`"))} is known", $"Write all three: {string.Join(", ", Keys.Select(key => $"`{key}: 70 mm`"))}.");
        return null;
    }
}
