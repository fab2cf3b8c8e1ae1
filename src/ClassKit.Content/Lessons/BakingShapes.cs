using ClassKit.Content.Diagnostics;
using ClassKit.Content.FrontMatter;
using ClassKit.Content.Quantities;
using ClassKit.Lessons.Authored;

namespace ClassKit.Content.Lessons;

/// <summary>Reads what a piece bakes in: the size of its cup, the size of its loaf tin, that it stands free, or nothing.</summary>
internal static class BakingShapes
{
    private static readonly string[] Cup = ["cup top", "cup bottom", "cup depth"];

    private static readonly string[] Tin = ["tin length", "tin width", "tin depth"];

    private static readonly Dictionary<string, bool> WithoutTin = new() { ["free-standing"] = true };

    /// <summary>From a thimble to a sheet pan, in whatever unit is written.</summary>
    private static readonly Bounds Sizes = new(0, false, 1000);

    /// <summary>The shape; null where none is described, or with the reason noted.</summary>
    public static BakingShape? Read(Fields fields, ProblemList problems)
    {
        var cup = Sized(Cup, (top, bottom, depth) => new BakingCup(top, bottom, depth), fields, problems);
        var tin = Sized(Tin, (length, width, depth) => new LoafTin(length, width, depth), fields, problems);
        var isFree = fields.Has("shape") && fields.Choice("shape", WithoutTin);
        return cup ?? tin ?? (isFree ? FreeStanding.Round : null);
    }

    private static BakingShape? Sized(string[] keys, Func<double, double, double, BakingShape> shape, Fields fields, ProblemList problems)
    {
        var there = keys.Where(fields.Has).ToList();
        var sizes = there.Select(key => fields.Quantity(key, Dimensions.Millimetres, Sizes, 1)).ToList();
        if (there.Count == keys.Length)
            return shape(sizes[0], sizes[1], sizes[2]);
        if (there.Count > 0)
            problems.Add(
                fields.LineOf(there[0]),
                $"Of the {keys[0].Split(' ')[0]} only {string.Join(" and ", there.Select(key => $"`{key}`"))} is known",
                $"Write all three: {string.Join(", ", keys.Select(key => $"`{key}: 70 mm`"))}."
            );
        return null;
    }
}
