using ClassKit.Content.Classes;
using ClassKit.Content.Diagnostics;
using ClassKit.Content.Sources;
using ClassKit.Desk.Folders;
using ClassKit.Desk.Names;
using ClassKit.Desk.Serving;
using ClassKit.Desk.Texts;
using ClassKit.UseCases.Output.Writing;

namespace ClassKit.Desk.Week;

/// <summary>
/// Another class of the same teacher, in a folder of its own: its kitchen is that of the first class as long as nobody says otherwise, its
/// students and their allergies are not.
/// </summary>
internal static class NewClass
{
    private const string Profile = "class.md";

    private const string Ingredients = "ingredients.csv";

    private const string Prices = "prices";

    /// <summary>Begins it.</summary>
    /// <returns>Why not; empty if it is there.</returns>
    public static IReadOnlyList<Diagnostic> Begin(Visit visit, string name)
    {
        if (name.Length is 0 or > 120 || name.Any(char.IsControl))
            return [new("name", null, "The class has no name, or a very long one", "Call it something like Thursday bakers.")];
        var folder = Path.Combine(visit.Folder.Root, PlainKey.OfFile(name.ToLowerInvariant()).Trim('.', '-'));
        if (
            folder.Length <= visit.Folder.Root.Length + 1
            || Path.Exists(folder)
            || Path.GetFileName(folder) is TeachingFolder.RoundsName or TeachingFolder.PacksName or TeachingFolder.MeasuredName
            || visit.Folder.Classes().Any(known => known.Name.Equals(name, StringComparison.OrdinalIgnoreCase))
        )
            return [new("name", null, $"There is a class or a folder called `{name}` already", "Give this class another name.")];
        if (NameOnRecord.LaterNameOf(visit, name) is { } later)
            return
            [
                new(
                    "name",
                    null,
                    $"On record {later} was called `{name}` before",
                    "Give this class another name: under that one, what is on record of the two would be mixed."
                ),
            ];
        var like = visit
            .Folder.Classes()
            .FirstOrDefault(known =>
                known.Profile.Succeeded
                && OwnText.Read(known.File) is { } text
                && !FrontLines.IsLong(text.Text, "allergies")
                && !FrontLines.IsLong(text.Text, Prices)
                && !FrontLines.IsLong(text.Text, "roster")
            );
        try
        {
            var text = like is null ? Started() : Like(like, folder);
            var file = Path.Combine(folder, Profile);
            Directory.CreateDirectory(folder);
            if (like is not null && Path.Combine(Path.GetDirectoryName(like.File)!, Ingredients) is var own && File.Exists(own))
                File.Copy(own, Path.Combine(folder, Ingredients));
            WholeFile.Write(file, System.Text.Encoding.UTF8.GetBytes(TextHeading.With(text, name)));
            var problems = ClassProfileReader.Read(Library.OfPaths().At(file)).Problems;
            // What does not hold is no class, and must not lie there as one.
            if (problems.Count > 0)
                TakeAway(folder);
            return problems;
        }
        catch (Exception failure) when (failure is IOException or UnauthorizedAccessException)
        {
            TakeAway(folder);
            return
            [
                new(
                    folder,
                    null,
                    $"The class could not be begun: {failure.Message}",
                    "Check that there is room and that you may write there."
                ),
            ];
        }
    }

    /// <summary>What was begun of it would stand in the way of the next try.</summary>
    private static void TakeAway(string folder)
    {
        try
        {
            if (Directory.Exists(folder))
                Directory.Delete(folder, recursive: true);
        }
        catch (Exception failure) when (failure is IOException or UnauthorizedAccessException)
        {
            // That it is there is said when the name is tried again.
        }
    }

    private static string Started()
    {
        using var shipped = new StreamReader(Shipped.Tree.Open("starting/" + Profile));
        return FrontLines.With(shipped.ReadToEnd().ReplaceLineEndings("\n"), Prices, "");
    }

    private static string Like(ClassEntry like, string folder)
    {
        // Remarks behind the allergies, and what stands below, may speak of the other class's students.
        var top = FrontLines.Top(OwnText.Read(like.File)!.Text);
        var text = FrontLines.With(FrontLines.With(FrontLines.With(top, "allergies", ""), "allergies", "[]"), "roster", "");
        // How many they are is said by the list of the other class, where its page does not.
        foreach (var (key, count) in new[] { ("students", like.Profile.Model!.Students), ("teams", like.Profile.Model.Teams) })
            if (FrontLines.Value(text, key) is null)
                text = FrontLines.With(text, key, count.ToString(System.Globalization.CultureInfo.InvariantCulture));
        return FrontLines.Value(text, Prices) is { Length: > 0 } prices
            ? FrontLines.With(
                text,
                Prices,
                Path.GetRelativePath(folder, Path.GetFullPath(prices.Trim('"', '\''), Path.GetDirectoryName(like.File)!)).Replace('\\', '/')
            )
            : text;
    }
}
