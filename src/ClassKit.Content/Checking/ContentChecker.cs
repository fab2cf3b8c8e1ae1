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
        var folders = new List<Source>();
        foreach (var source in paths.Select(library.At))
        {
            var found =
                source.IsFolder ? [.. Recognised(source)]
                : source.IsFile ? Named(source, problems)
                : [];
            if (!source.IsFolder && !source.IsFile)
                problems.Add(
                    new(
                        source.Shown,
                        null,
                        "There is no such file or folder",
                        Nearby.Folders(source) ?? Nearby.Files(source) ?? "Check the spelling."
                    )
                );
            else if (found.Count == 0 && source.IsFolder && !Overlooked.In(source, []).Any())
                problems.Add(
                    new(
                        source.Shown,
                        null,
                        "There is nothing to check below this folder",
                        "Name a folder that holds lessons, rubrics, class profiles, price lists or rosters."
                    )
                );
            items.AddRange(found);
            if (source.IsFolder)
                folders.Add(source);
        }
        items = [.. items.DistinctBy(item => library.Tree.Full(item.Path))];
        var doubts = new List<Diagnostic>();
        // Lessons and classes lead to other files, and say what those are meant to be.
        foreach (var item in items.OrderBy(item => item.Kind is not (ContentKind.Lesson or ContentKind.ClassProfile)))
        {
            if (library.IsLinked(item.Path) && ContentRecognition.Plainly(library.At(item.Path)) is null)
                continue;
            var (found, doubtful) = Told(item.Kind, library.At(item.Path));
            problems.AddRange(found);
            doubts.AddRange(doubtful);
        }
        var overlooked = folders.SelectMany(folder => Overlooked.In(folder, items)).ToList();
        problems.AddRange(overlooked.Where(one => one.Weight == Weight.Blocks));
        doubts.AddRange(
            overlooked.Where(one =>
                one.Weight != Weight.Blocks
                && !problems.Exists(problem =>
                    $"{problem.Found} {problem.Expected}".Contains(Path.GetFileName(one.File), StringComparison.Ordinal)
                )
            )
        );
        return new(items, [.. problems.Distinct()]) { Doubts = [.. doubts.Distinct()] };
    }

    /// <summary>What is recognised at or below a folder, in the order of names.</summary>
    /// <param name="folder">The folder.</param>
    /// <param name="without">Names of folders directly in it that are left aside, since what lies there was not authored.</param>
    public static IEnumerable<CheckedItem> Recognised(Source folder, params IReadOnlyCollection<string> without)
    {
        ArgumentNullException.ThrowIfNull(folder);
        ArgumentNullException.ThrowIfNull(without);
        if (folder.In(LessonReader.FileName).IsFile)
            return
            [
                new(folder.Path, ContentKind.Lesson),
                .. IngredientsReader
                    .FileNames.Select(folder.In)
                    .Where(file => file.IsFile)
                    .Select(file => new CheckedItem(file.Path, ContentKind.Ingredients)),
            ];
        var tree = folder.Library.Tree;
        var files = tree.Files(folder.Path)
            .Where(name =>
                name.EndsWith(".md", StringComparison.OrdinalIgnoreCase)
                || name.StartsWith("roster", StringComparison.OrdinalIgnoreCase)
                || IngredientsReader.FileNames.Contains(name, StringComparer.OrdinalIgnoreCase)
            )
            .Select(folder.In)
            .Select(file => (file.Path, Kind: ContentRecognition.Of(file)))
            .Where(file => file.Kind is not null)
            .Select(file => new CheckedItem(file.Path, file.Kind!.Value));
        var folders = tree.Folders(folder.Path).Where(name => name is not ("bin" or "obj") && !without.Contains(name)).Select(folder.In);
        return files.Concat(folders.SelectMany(inside => Recognised(inside)));
    }

    private static IReadOnlyList<CheckedItem> Named(Source file, List<Diagnostic> problems)
    {
        if (ContentRecognition.Of(file) is { } kind)
            return [new(file.Path, kind)];
        problems.Add(
            new(
                file.Shown,
                null,
                "It is not clear what this file is",
                "Exercises have a line `skill:`, formulas `leavening:`, marking schemes `accuracy:`, rules for grades `resit:`, terms `roster:`, price lists `currency:` and class profiles `pieces per team:` at the top; rubrics have a section `## Criteria`; rosters end in .csv, .tsv, .xlsx or .ods; a file of ingredients is called ingredients.csv."
            )
        );
        return [];
    }

    private static (IReadOnlyList<Diagnostic> Problems, IReadOnlyList<Diagnostic> Doubts) Told(ContentKind kind, Source source) =>
        kind switch
        {
            ContentKind.Lesson => Told(LessonReader.Read(source)),
            ContentKind.Formula => Told(LessonFormulaReader.Read(source)),
            ContentKind.Exercise => Told(ExerciseReader.Read(source)),
            ContentKind.MarkingScheme => Told(MarkingSchemeReader.Read(source)),
            ContentKind.PracticalRubric => Told(PracticalRubricReader.Read(source)),
            ContentKind.GradeRule => Told(GradeRuleReader.Read(source)),
            ContentKind.Term => Told(TermReader.Read(source)),
            ContentKind.ClassProfile => Told(ClassProfileReader.Read(source)),
            ContentKind.PriceList => Told(PriceListReader.Read(source)),
            ContentKind.Roster => Told(RosterReader.Read(source)),
            ContentKind.Ingredients => Told(IngredientsReader.Read(source)),
        };

    private static (IReadOnlyList<Diagnostic> Problems, IReadOnlyList<Diagnostic> Doubts) Told<T>(Reading<T> reading)
        where T : class => (reading.Problems, reading.Doubts);
}
