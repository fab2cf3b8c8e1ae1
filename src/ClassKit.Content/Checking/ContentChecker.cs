using ClassKit.Content.Checking;
using ClassKit.Content.Sources;

namespace ClassKit.Content;

/// <summary>Checks lessons, exercises, rubrics, class profiles and rosters: whatever is found at or below the named paths.</summary>
public static class ContentChecker
{
    /// <summary>No hidden folders, none that cannot be read, and no links, which may lead in circles.</summary>
    private static readonly EnumerationOptions Visible = new() { AttributesToSkip = FileAttributes.Hidden | FileAttributes.System | FileAttributes.ReparsePoint };

    /// <summary>Everything that is wrong, over all paths.</summary>
    /// <remarks>Of a folder only what is recognised is checked; a file that is named and not recognised is itself a problem.</remarks>
    public static ContentCheck Check(IEnumerable<string> paths)
    {
        ArgumentNullException.ThrowIfNull(paths);
        var items = new List<CheckedItem>();
        var problems = new List<Diagnostic>();
        foreach (var path in paths)
        {
            var found = Directory.Exists(path) ? [.. Below(path)] : File.Exists(path) ? Named(path, problems) : [];
            if (!Directory.Exists(path) && !File.Exists(path))
                problems.Add(new(ContentPath.Shown(path), null, "There is no such file or folder", Nearby.Folders(path) ?? Nearby.Files(path) ?? "Check the spelling."));
            else if (found.Count == 0 && Directory.Exists(path))
                problems.Add(new(ContentPath.Shown(path), null, "There is nothing to check below this folder", "Name a folder that holds lessons, rubrics, class profiles, price lists or rosters."));
            items.AddRange(found);
        }
        items = [.. items.DistinctBy(item => Path.TrimEndingDirectorySeparator(Path.GetFullPath(item.Path)))];
        problems.AddRange(items.SelectMany(Problems));
        return new(items, [.. problems.Distinct()]);
    }

    /// <summary>What is recognised at or below a folder, in the order of names.</summary>
    internal static IEnumerable<CheckedItem> Recognised(string folder) => Below(folder);

    private static IReadOnlyList<CheckedItem> Named(string file, List<Diagnostic> problems)
    {
        if (ContentRecognition.Of(file) is { } kind)
            return [new(file, kind)];
        problems.Add(new(ContentPath.Shown(file), null, "It is not clear what this file is", "Exercises have a line `skill:`, formulas `leavening:`, marking schemes `accuracy:`, rules for grades `resit:`, price lists `currency:` and class profiles `pieces per team:` at the top; rubrics have a section `## Criteria`; rosters end in .csv."));
        return [];
    }

    private static IEnumerable<CheckedItem> Below(string folder)
    {
        if (File.Exists(Path.Combine(folder, LessonReader.FileName)))
            return [new(folder, ContentKind.Lesson)];
        var files = Directory.EnumerateFiles(folder, "*", Visible).Order(StringComparer.Ordinal)
            .Where(file => !file.EndsWith(".csv", StringComparison.OrdinalIgnoreCase) || Path.GetFileName(file).StartsWith("roster", StringComparison.OrdinalIgnoreCase))
            .Select(file => (File: file, Kind: ContentRecognition.Of(file)))
            .Where(file => file.Kind is not null)
            .Select(file => new CheckedItem(file.File, file.Kind!.Value));
        var folders = Directory.EnumerateDirectories(folder, "*", Visible).Order(StringComparer.Ordinal)
            .Where(inner => Path.GetFileName(inner) is not ("bin" or "obj"));
        return files.Concat(folders.SelectMany(Below));
    }

    private static IReadOnlyList<Diagnostic> Problems(CheckedItem item) => item.Kind switch
    {
        ContentKind.Lesson => LessonReader.Read(item.Path).Problems,
        ContentKind.Formula => LessonFormulaReader.Read(item.Path).Problems,
        ContentKind.Exercise => ExerciseReader.Read(item.Path).Problems,
        ContentKind.MarkingScheme => MarkingSchemeReader.Read(item.Path).Problems,
        ContentKind.PracticalRubric => PracticalRubricReader.Read(item.Path).Problems,
        ContentKind.GradeRule => GradeRuleReader.Read(item.Path).Problems,
        ContentKind.ClassProfile => ClassProfileReader.Read(item.Path).Problems,
        ContentKind.PriceList => PriceListReader.Read(item.Path).Problems,
        ContentKind.Roster => RosterReader.Read(item.Path).Problems,
    };
}
