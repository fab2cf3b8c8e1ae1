using ClassKit.Content.Sources;

namespace ClassKit.Desk.Folders;

/// <summary>A folder for a look round: the invented class that comes with the program, in a place that only this user may read and that goes away with the desk.</summary>
internal static class LookRound
{
    private const string Class = "demo-cohort";

    private static readonly string[] Files = ["class.md", "roster.csv", "prices.md"];

    /// <summary>Makes one.</summary>
    public static TeachingFolder Make()
    {
        var folder = Directory.CreateTempSubdirectory("classkit-look-round-").FullName;
        foreach (var name in Files)
        {
            using var shipped = Shipped.Tree.Open($"{Class}/{name}");
            using var file = File.Create(Path.Combine(folder, name));
            shipped.CopyTo(file);
        }
        return new(folder) { IsLookRound = true };
    }
}
