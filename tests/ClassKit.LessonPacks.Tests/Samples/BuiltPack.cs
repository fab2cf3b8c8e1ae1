using System.Text;
using AngleSharp.Dom;
using AngleSharp.Html.Parser;
using ClassKit.CellFormulas.Sheets;
using ClassKit.Content.Classes;
using ClassKit.Content.Lessons;
using ClassKit.Lessons.Authored;
using ClassKit.Lessons.Classes;
using ClassKit.Lessons.Packs;
using ClassKit.Notes;
using ClassKit.UseCases.Output;
using ClassKit.UseCases.Packs;
using ClassKit.UseCases.Running;
using ClassKit.Workbooks.Returned;

namespace ClassKit.LessonPacks.Tests.Samples;

/// <summary>A pack as it lies in the folder: what an instructor gets, and nothing that only the program knows.</summary>
internal sealed class BuiltPack
{
    // Made when it is looked at: most tests look at one page of twenty.
    private readonly Dictionary<string, Lazy<byte[]>> _files;
    private readonly Dictionary<string, Lazy<IDocument>> _pages;

    private BuiltPack(Produced produced)
    {
        Assert.True(produced.Succeeded, string.Join('\n', produced.Problems));
        Notes = produced.Notes;
        _files = produced.Files.ToDictionary(file => file.Path, file => new Lazy<byte[]>(() => file.Content));
        _pages = _files
            .Where(file => file.Key.EndsWith(".html", StringComparison.Ordinal))
            .ToDictionary(
                file => file.Key,
                file => new Lazy<IDocument>(() => new HtmlParser().ParseDocument(Encoding.UTF8.GetString(file.Value.Value)))
            );
    }

    /// <summary>The shipped lesson for the shipped class.</summary>
    public static BuiltPack Demo { get; } = Of("one-tin-three-lifts", "class.md");

    /// <summary>The second lesson, for the class on a mountain.</summary>
    public static BuiltPack Mountain { get; } = Of("thin-air-quick-breads", "mountain-class.md");

    /// <summary>The third lesson, for a class without ovens.</summary>
    public static BuiltPack NoOven { get; } = Of("no-oven-in-the-house", "no-oven-class.md");

    /// <summary>The fourth lesson, in which three breads are one dough.</summary>
    public static BuiltPack LongMorning { get; } = Of("one-dough-three-clocks", "long-morning-class.md");

    public IReadOnlyDictionary<string, IDocument> Pages => _pages.ToDictionary(page => page.Key, page => page.Value.Value);

    /// <summary>What the terminal says.</summary>
    public IReadOnlyList<Note> Notes { get; }

    public IEnumerable<string> Files => _files.Keys;

    public IDocument this[string page] => _pages[page].Value;

    /// <summary>The shipped lesson for the shipped class with lines of its profile changed, each <c>key: value</c>.</summary>
    public static BuiltPack Adapted(string lesson, string profile, params string[] lines)
    {
        var folder = Directory.CreateTempSubdirectory("classkit-adapted-");
        try
        {
            var text = File.ReadAllLines(Repository.PathOf("demo-cohort", profile)).ToList();
            foreach (var line in lines)
            {
                var key = line[..(line.IndexOf(':', StringComparison.Ordinal) + 1)];
                var at = text.FindIndex(old => old.StartsWith(key, StringComparison.Ordinal));
                if (at >= 0)
                    text[at] = line;
                else
                    text.Insert(1, line);
            }
            File.WriteAllLines(Path.Combine(folder.FullName, "class.md"), text);
            File.Copy(Repository.PathOf("demo-cohort", "prices.md"), Path.Combine(folder.FullName, "prices.md"));
            return new(PackCommand.Make(Repository.PathOf("lessons", lesson), Path.Combine(folder.FullName, "class.md")));
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }

    /// <summary>The third lesson for its class, its texts edited: each file by its path within the lesson.</summary>
    public static BuiltPack EditedNoOven(Func<string, string, string> edit)
    {
        var folder = Directory.CreateTempSubdirectory("classkit-edited-");
        try
        {
            foreach (
                var file in new[] { "lessons/no-oven-in-the-house", "lessons/practice", "rubrics" }.SelectMany(part =>
                    Directory.EnumerateFiles(Repository.PathOf(part.Split('/')), "*", SearchOption.AllDirectories)
                )
            )
            {
                var target = Path.Combine(folder.FullName, Path.GetRelativePath(Repository.Root, file));
                Directory.CreateDirectory(Path.GetDirectoryName(target)!);
                if (file.EndsWith(".md", StringComparison.Ordinal) && file.Contains("no-oven", StringComparison.Ordinal))
                    File.WriteAllText(target, edit(Path.GetFileName(file), File.ReadAllText(file)));
                else
                    File.Copy(file, target);
            }
            return new(
                PackCommand.Make(
                    Path.Combine(folder.FullName, "lessons", "no-oven-in-the-house"),
                    Repository.PathOf("demo-cohort", "no-oven-class.md")
                )
            );
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }

    private static BuiltPack Of(string lesson, string profile) =>
        new(PackCommand.Make(Repository.PathOf("lessons", lesson), Repository.PathOf("demo-cohort", profile)));

    public byte[] Bytes(string file) => _files[file].Value;

    /// <summary>Every text of a workbook.</summary>
    public static IEnumerable<string> Texts(byte[] workbook) =>
        ReturnedWorkbookReader
            .Read(workbook)
            .Workbook!.Sheets.SelectMany(sheet => sheet.Cells.Values)
            .Where(cell => cell.Stored.IsText)
            .Select(cell => cell.Stored.Text);

    public WorkbookSnapshot Workbook(string file) => ReturnedWorkbookReader.Read(_files[file].Value).Workbook!;

    /// <summary>
    /// The workbook after LibreOffice computed every formula anew, with cells changed before by lines of Python on the workbook <c>w</c>.
    /// </summary>
    public WorkbookSnapshot Recalculated(string file, string lines = "") => Recalculated(_files[file].Value, lines);

    public static WorkbookSnapshot Recalculated(byte[] workbook, string lines = "") =>
        ReturnedWorkbookReader.Read(LibreOffice.SaveAgain(OpenPyXl.Run(workbook, lines).Saved)).Workbook!;

    /// <summary>A lesson for a class, planned and in words.</summary>
    public static LessonPack Model(Lesson lesson, ClassProfile profile) => BuildPack.Run(new(lesson, profile, ""), Run.Unwatched).Model!;

    /// <summary>The demo pack as computed, without a bench plan.</summary>
    public static ComputedPack DemoPack =>
        ComputedPack
            .Build(
                LessonReader.Read(Repository.PathOf("lessons", "one-tin-three-lifts")).Model!,
                ClassProfileReader.Read(Repository.PathOf("demo-cohort", "class.md")).Model!
            )
            .Value;
}
