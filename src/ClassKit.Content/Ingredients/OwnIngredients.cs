using ClassKit.Baking.Ingredients;
using ClassKit.Content.Diagnostics;
using ClassKit.Content.Sources;

namespace ClassKit.Content.Ingredients;

/// <summary>
/// The ingredients that a file can name by where it lies: a file of ingredients beside it, or in one of the folders above it, adds to those
/// that ship.
/// </summary>
internal static class OwnIngredients
{
    /// <summary>
    /// A formula lies in a lesson, a lesson among lessons, and those in a teaching folder: no further up is anything looked for that nobody
    /// named.
    /// </summary>
    private const int Highest = 4;

    /// <summary>A list for the problems of a file that may name ingredients.</summary>
    public static ProblemList ProblemsOf(Source source)
    {
        var (pantry, broken) = Of(source);
        return new(source.Shown) { Pantry = pantry, Beneath = broken };
    }

    private static (Pantry Pantry, Diagnostic? Broken) Of(Source source)
    {
        var files = new List<Source>();
        var folder = source.IsFolder ? source : source.Folder;
        for (var up = 0; up < Highest; up++, folder = folder.Folder)
        {
            files.AddRange(IngredientsReader.FileNames.Select(folder.In).Where(file => file.IsFile).Take(1));
            if (folder.Name.Length == 0)
                break;
        }
        if (files.Count == 0)
            return (Pantry.Shipped, null);
        files.Reverse();
        var pantry = Pantry.Shipped;
        foreach (var file in files)
        {
            var own = IngredientsReader.Read(file);
            if (own.Model is null)
                return (pantry, own.Problems[0]);
            pantry = pantry.With(own.Model.Own);
        }
        return (source.Library.Shared(string.Join('|', files.Select(file => source.Library.Tree.Full(file.Path))), pantry), null);
    }
}
