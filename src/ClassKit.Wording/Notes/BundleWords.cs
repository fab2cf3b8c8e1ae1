using ClassKit.Wording.Counts;

namespace ClassKit.Wording.Notes;

/// <summary>What went into a bundle and what came out of one.</summary>
internal static class BundleWords
{
    public static IEnumerable<string> HandedOver(string bundle, IReadOnlyList<string> taken, IReadOnlyList<string> left) =>
        [
            $"{bundle} holds {Counted.Of(taken.Count, "file")}:",
            .. taken.Select(Line),
            .. left.Count == 0 ? [] : new[] { "Not in it, for the lesson does not lead there:" }.Concat(left.Select(Line)),
            "Classes, rosters and what came back are never in it.",
        ];

    public static IEnumerable<string> Received(IReadOnlyList<string> files, IReadOnlyList<string> left) =>
        [
            $"It brought {Counted.Of(files.Count, "file")}:",
            .. files.Select(Line),
            .. left.Count == 0
                ? []
                : new[] { "Left in the bundle, for no lesson leads to such a file or its name leads elsewhere:" }.Concat(left.Select(Line)),
        ];

    private static string Line(string path) => $"  {path}";
}
