using ClassKit.Content.Diagnostics;
using ClassKit.Content.Lessons;
using ClassKit.Content.Recognition;
using ClassKit.Content.Sources;

namespace ClassKit.Content.Checking;

/// <summary>Files of a teaching folder that nothing has read: under a name that is not looked for, or in no list.</summary>
internal static class Overlooked
{
    /// <summary>So many of one folder are named one by one; more of them are one message.</summary>
    private const int MostAlone = 3;

    /// <summary>Written for people, or used where a command asks for it.</summary>
    private static readonly string[] Known =
    [
        "README.md",
        "README.txt",
        "LICENSE",
        "corrections.csv",
        "record-is-kept-in.txt",
        "Thumbs.db",
        "desktop.ini",
    ];

    /// <summary>The record of an instructor's teaching lies in the teaching folder, with what its database keeps beside it.</summary>
    private const string Record = "record.sqlite";

    /// <summary>
    /// What is overlooked at or below a folder that was checked; folders in which nothing was recognised are somebody else's.
    /// </summary>
    public static IEnumerable<Diagnostic> In(Source folder, IReadOnlyList<CheckedItem> items, bool isLesson = false)
    {
        var tree = folder.Library.Tree;
        var names = tree.Files(folder.Path);
        var lessonHere = names.Contains(LessonReader.FileName);
        var astray = lessonHere ? null : names.FirstOrDefault(name => LooseFile.IsLesson(name));
        if (astray is not null)
            yield return LooseFile.OfLesson(folder.In(astray));
        if (
            isLesson
            || lessonHere
            || items.Any(item => tree.Full(item.Path) is var full && names.Any(name => tree.Full(folder.In(name).Path) == full))
        )
        {
            var loose = names
                .Where(name => name != astray && IsLoose(folder.In(name), items))
                .Select(name => LooseFile.Of(folder.In(name), isLesson || lessonHere))
                .ToList();
            foreach (var alike in loose.GroupBy(one => (one.Found, one.Weight)))
            {
                if (alike.Count() <= MostAlone)
                    foreach (var one in alike)
                        yield return one;
                else
                    yield return alike.First() with
                    {
                        File = folder.Shown,
                        Found =
                            $"{alike.First().Found}: {string.Join(", ", alike.Take(MostAlone).Select(one => Path.GetFileName(one.File)))} and {alike.Count() - MostAlone} more",
                    };
            }
        }
        foreach (
            var one in tree.Folders(folder.Path)
                .Where(name => name is not ("bin" or "obj"))
                .SelectMany(name => In(folder.In(name), items, isLesson || lessonHere))
        )
            yield return one;
    }

    private static bool IsLoose(Source file, IReadOnlyList<CheckedItem> items)
    {
        var (library, name) = (file.Library, Path.GetFileName(file.Path));
        if (
            Known.Contains(name, StringComparer.OrdinalIgnoreCase)
            || name.StartsWith('~')
            || name.StartsWith(Record, StringComparison.Ordinal)
            || library.IsLinked(file.Path)
        )
            return false;
        return !library.HasRead(file.Path)
            || (
                name.EndsWith(".md", StringComparison.OrdinalIgnoreCase)
                && ContentRecognition.Of(file) is null
                && !items.Any(item => library.Tree.Full(item.Path) == library.Tree.Full(file.Path))
            );
    }
}
