using ClassKit.Content.Classes;
using ClassKit.Content.Diagnostics;
using ClassKit.Content.Exercises;
using ClassKit.Content.Ingredients;
using ClassKit.Content.Lessons;
using ClassKit.Content.Recognition;
using ClassKit.Content.Rosters;
using ClassKit.Content.Rubrics;
using ClassKit.Content.Sources;
using ClassKit.Content.Terms;

namespace ClassKit.Content.Checking;

/// <summary>Checks lessons, exercises, rubrics, class profiles and rosters: whatever is found at or below the named paths.</summary>
public static class ContentChecker
{
    /// <summary>Everything that is wrong, over all paths.</summary>
    /// <remarks>Of a folder only what is recognised is checked; a file that is named and not recognised is itself a problem.</remarks>
    /// <param name="paths">Files and folders of the library.</param>
    /// <param name="library">Reads them; one of the files of this machine if null.</param>
    public static ContentCheck Check(IEnumerable<string> paths, Library? library = null)
    {
        ArgumentNullException.ThrowIfNull(paths);
        library ??= Library.OfPaths();
        var items = new List<CheckedItem>();
        var problems = new List<Diagnostic>();
        foreach (var source in paths.Select(library.At))
        {
            var found = source.IsFolder ? [.. Recognised(source)] : source.IsFile ? Named(source, problems) : [];
            if (!source.IsFolder && !source.IsFile)
                problems.Add(new(source.Shown, null, "There is no such file or folder", Nearby.Folders(source) ?? Nearby.Files(source) ?? "Check the spelling."));
            else if (found.Count == 0 && source.IsFolder)
                problems.Add(new(source.Shown, null, "There is nothing to check below this folder", "Name a folder that holds lessons, rubrics, class profiles, price lists or rosters."));
            items.AddRange(found);
        }
        items = [.. items.DistinctBy(item => library.Tree.Full(item.Path))];
        problems.AddRange(items.SelectMany(item => Problems(item.Kind, library.At(item.Path))));
        return new(items, [.. problems.Distinct()]);
    }

    /// <summary>What is recognised at or below a folder, in the order of names.</summary>
    internal static IEnumerable<CheckedItem> Recognised(Source folder)
    {
        if (folder.In(LessonReader.FileName).IsFile)
            return [new(folder.Path, ContentKind.Lesson), .. IngredientsReader.FileNames.Select(folder.In).Where(file => file.IsFile).Select(file => new CheckedItem(file.Path, ContentKind.Ingredients))];
        var tree = folder.Library.Tree;
        var files = tree.Files(folder.Path)
            .Where(name => name.EndsWith(".md", StringComparison.OrdinalIgnoreCase) || name.StartsWith("roster", StringComparison.OrdinalIgnoreCase) || IngredientsReader.FileNames.Contains(name, StringComparer.OrdinalIgnoreCase))
            .Select(folder.In)
            .Select(file => (file.Path, Kind: ContentRecognition.Of(file)))
            .Where(file => file.Kind is not null)
            .Select(file => new CheckedItem(file.Path, file.Kind!.Value));
        var folders = tree.Folders(folder.Path).Where(name => name is not ("bin" or "obj")).Select(folder.In);
        return files.Concat(folders.SelectMany(Recognised));
    }

    private static IReadOnlyList<CheckedItem> Named(Source file, List<Diagnostic> problems)
    {
        if (ContentRecognition.Of(file) is { } kind)
            return [new(file.Path, kind)];
        problems.Add(new(file.Shown, null, "It is not clear what this file is", "Exercises have a line `skill:`, formulas `leavening:`, marking schemes `accuracy:`, rules for grades `resit:`, terms `roster:`, price lists `currency:` and class profiles `pieces per team:` at the top; rubrics have a section `## Criteria`; rosters end in .csv, .tsv, .xlsx or .ods; a file of ingredients is called ingredients.csv."));
        return [];
    }

    private static IReadOnlyList<Diagnostic> Problems(ContentKind kind, Source source) => kind switch
    {
        ContentKind.Lesson => LessonReader.Read(source).Problems,
        ContentKind.Formula => LessonFormulaReader.Read(source).Problems,
        ContentKind.Exercise => ExerciseReader.Read(source).Problems,
        ContentKind.MarkingScheme => MarkingSchemeReader.Read(source).Problems,
        ContentKind.PracticalRubric => PracticalRubricReader.Read(source).Problems,
        ContentKind.GradeRule => GradeRuleReader.Read(source).Problems,
        ContentKind.Term => TermReader.Read(source).Problems,
        ContentKind.ClassProfile => ClassProfileReader.Read(source).Problems,
        ContentKind.PriceList => PriceListReader.Read(source).Problems,
        ContentKind.Roster => RosterReader.Read(source).Problems,
        ContentKind.Ingredients => IngredientsReader.Read(source).Problems,
    };
}
