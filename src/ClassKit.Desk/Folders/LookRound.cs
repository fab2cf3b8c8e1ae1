using ClassKit.Content.Sources;
using ClassKit.UseCases.Output.Writing;

namespace ClassKit.Desk.Folders;

/// <summary>
/// A folder for a look round: the invented class that comes with the program, in a place that only this user may read and that goes away
/// with the desk.
/// </summary>
internal static class LookRound
{
    private const string Class = "demo-cohort/";

    /// <summary>What the class's files lead to lies one folder further up there.</summary>
    private const string Rubrics = "../rubrics/";

    private static readonly string[] Files =
    [
        "class.md",
        "roster.csv",
        "prices.md",
        "term/term.md",
        "term/marks.csv",
        "term/bench-day-one.csv",
        "term/bench-day-one-second.csv",
        "term/bench-day-two.csv",
        "../rubrics/term-grade.md",
        "../rubrics/bench-work.md",
    ];

    private const string Name = "classkit-look-round-";

    /// <summary>Makes one, and takes away those of desks that were ended so hard that they could not.</summary>
    public static TeachingFolder Make()
    {
        foreach (var left in Directory.EnumerateDirectories(Path.GetTempPath(), Name + "*"))
            TakeAway(left);
        var folder = Directory.CreateTempSubdirectory(Name).FullName;
        foreach (var name in Files)
        {
            using var shipped = new StreamReader(
                Shipped.Tree.Open(name.StartsWith("../", StringComparison.Ordinal) ? name[3..] : Class + name)
            );
            var file = Path.Combine(folder, name.Replace("../", "", StringComparison.Ordinal));
            Directory.CreateDirectory(Path.GetDirectoryName(file)!);
            File.WriteAllText(file, shipped.ReadToEnd().Replace("../" + Rubrics, Rubrics, StringComparison.Ordinal));
        }
        return new(folder) { IsLookRound = true };
    }

    /// <summary>
    /// A desk holds a lock in its folder for as long as it is open; who has the lock, or another user's folder, is left alone.
    /// </summary>
    private static void TakeAway(string left)
    {
        try
        {
            if (
                new DirectoryInfo(left).LinkTarget is not null
                || !File.Exists(Path.Combine(left, FolderHolder.LockName))
                || WriterLock.TryTake(left, FolderHolder.LockName) is not { } held
            )
                return;
            held.Dispose();
            Directory.Delete(left, recursive: true);
        }
        catch (Exception failure) when (failure is IOException or UnauthorizedAccessException)
        {
            // The system takes temporary files away by itself.
        }
    }
}
