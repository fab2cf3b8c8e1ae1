using System.Net;
using ClassKit.Content.Sheets;
using ClassKit.Exercises.Cohorts;
using ClassKit.UseCases.Intake;
using ClassKit.Workbooks.Erasing;

namespace ClassKit.UseCases.Erasing;

/// <summary>What single files say of a student. A file that cannot be read says nothing.</summary>
/// <param name="Sought">The student.</param>
/// <param name="Forms">Forms of the student's classes.</param>
internal sealed record StudentLook(SoughtStudent Sought, KnownForms Forms)
{
    private static readonly char[] Separators = [',', ';', '\t', '|', '"'];

    private const int MostOfForm = 4 << 20;

    private static readonly string[] Tables = [".csv", ".tsv"],
        Texts = [".md", ".txt", ".csv", ".tsv", ".json", ".html", ".htm"],
        Workbooks = [".xlsx", ".ods"],
        Archives = [".zip"];

    /// <summary>What was written by hand as a rule: by its name alone it is nobody's.</summary>
    private static readonly string[] Authored = [".md", ".txt", ".csv", ".tsv"];

    private readonly Dictionary<string, bool> _practice = [];
    private readonly Dictionary<string, StudentWorkbook?> _books = [];
    private readonly Dictionary<string, ArchiveTrace?> _archives = [];

    /// <summary>Where the files lie.</summary>
    private ILookedThrough Files { get; init; } = new FilesOfFolder();

    /// <summary>How many archives lie around them.</summary>
    public int Depth { get; private init; }

    /// <summary>The same look at the files of an archive that lies here.</summary>
    public StudentLook Into(ILookedThrough archive) => new(Sought, Forms) { Files = archive, Depth = Depth + 1 };

    /// <summary>True of a plain table.</summary>
    public static bool IsTable(string file) => Is(file, Tables);

    /// <summary>True of a path that calls a file, or a folder on its way, by the student's id.</summary>
    public bool IsTheirsByName(string path) =>
        Sought.IsIdOf(Path.GetFileNameWithoutExtension(path)) || path.Split('/')[..^1].Any(Sought.IsIdOf);

    /// <summary>
    /// True of a file that is not ours and is the student's alone: their practice, or anything under their id where practice lies.
    /// </summary>
    public bool IsTheirs(string file, string path)
    {
        if (Is(file, Workbooks) && !IsOfAnother(file) && Book(file)?.IsTheirs == true)
            return true;
        return IsTheirsByName(path) && !Is(file, Authored) && Folders(file, path).Any(HoldsPractice);
    }

    /// <summary>
    /// A table without the student's rows, and how many there were; null where there is none or the table cannot be changed.
    /// </summary>
    public (byte[] Left, int Count)? Rows(string file)
    {
        if (IsOfAnother(file))
            return null;
        if (Is(file, Tables) && Bytes(file) is { } table)
            return StudentLines.Without(table, Sought) is { Taken: > 0 and var taken, Left: var left } ? (left, taken) : null;
        if (MayBeForm(file) && Forms.Without(file, Bytes(file)!) is { } form)
            return (form, 1);
        if (!Is(file, Workbooks) || Book(file) is not { IsNamed: true } book || book.Rows(Sought) is not { Count: > 0 } rows)
            return null;
        return Emptied.Of(file, Bytes(file)!, rows) is { } cleared ? (cleared, rows.Values.Sum(sheet => sheet.Count)) : null;
    }

    /// <summary>What an archive holds of the student; null for any other file, and for one that cannot be opened.</summary>
    public ArchiveTrace? Archive(string file)
    {
        if (!Is(file, Archives) || IsOfAnother(file))
            return null;
        if (!_archives.TryGetValue(file, out var archive))
            _archives[file] = archive = Bytes(file) is { } bytes ? ArchiveLook.Of(bytes, this) : null;
        return archive;
    }

    /// <summary>
    /// True of a file of a kind that is looked into, and that could not be: too large, damaged, held by another program or behind a
    /// password.
    /// </summary>
    public bool IsUnread(string file)
    {
        if (IsOfAnother(file) || Leftovers.Of(file.Replace('\\', '/')) is not null)
            return false;
        return Is(file, Workbooks) ? Book(file) is null
            : Is(file, Archives) ? Archive(file) is null
            : Is(file, Texts) && Bytes(file) is null;
    }

    /// <summary>
    /// The lines of a file that name the student, none where its name does or no lines can be told; null where nothing names them.
    /// </summary>
    public IReadOnlyList<int>? Lines(string file)
    {
        if (IsOfAnother(file))
            return null;
        if (Is(file, Texts) && Bytes(file) is { } bytes && LinesOf(file, bytes) is { Count: > 0 } lines)
            return lines;
        if (Is(file, Workbooks) && Book(file)?.IsNamed == true)
            return [];
        if (Archive(file)?.IsNamed == true)
            return [];
        return Sought.IsNamedIn(Path.GetFileNameWithoutExtension(file)) || Sought.IsIdOf(Path.GetFileNameWithoutExtension(file))
            ? []
            : null;
    }

    /// <summary>True of a workbook that names the student in a cell.</summary>
    public bool IsNamedInCells(string file) => Is(file, Workbooks) && Book(file)?.IsNamed == true;

    /// <summary>True if what is left of a table still names the student.</summary>
    public bool IsStillNamed(string file, byte[] left) =>
        Is(file, Texts) ? LinesOf(file, left).Count > 0 : StudentWorkbook.Read(left, Sought)?.IsNamed == true;

    private List<int> LinesOf(string file, byte[] bytes)
    {
        var text = TableLetters.Decode(bytes).Text;
        if (Path.GetExtension(file).StartsWith(".htm", StringComparison.OrdinalIgnoreCase))
            text = WebUtility.HtmlDecode(text);
        return !Sought.IsNamedIn(text)
            ? []
            :
            [
                .. text.ReplaceLineEndings("\n")
                    .Split('\n')
                    .Index()
                    .Where(line => Sought.IsNamedIn(line.Item) && !Sought.IsOfNamesake(line.Item.Split(Separators)))
                    .Select(line => line.Index + 1),
            ];
    }

    /// <summary>Pages save small files, and a workbook of marks names its class.</summary>
    private bool MayBeForm(string file) =>
        Path.GetExtension(file).ToLowerInvariant() switch
        {
            ".json" => Bytes(file) is { Length: < MostOfForm },
            ".xlsx" or ".ods" => Book(file)?.IsNamed == true,
            _ => false,
        };

    /// <summary>Files under another one's id are not looked into: a class has hundreds.</summary>
    private bool IsOfAnother(string file) => Sought.IsAnother(Path.GetFileNameWithoutExtension(file));

    private bool HoldsPractice(string folder)
    {
        if (!_practice.TryGetValue(folder, out var holds))
            _practice[folder] = holds = Files.In(folder).Any(file => Is(file, Workbooks) && Book(file)?.IsPractice == true);
        return holds;
    }

    /// <summary>The folder that a file lies in, and the one above it where it is called by the student's id.</summary>
    private IEnumerable<string> Folders(string file, string path)
    {
        var folder = Path.GetDirectoryName(file)!;
        yield return folder;
        if (path.Contains('/', StringComparison.Ordinal) && Sought.IsIdOf(Path.GetFileName(folder)))
            yield return Path.GetDirectoryName(folder)!;
    }

    private StudentWorkbook? Book(string file)
    {
        if (!_books.TryGetValue(file, out var book))
            _books[file] = book = Bytes(file) is { } bytes ? StudentWorkbook.Read(bytes, Sought) : null;
        return book;
    }

    private byte[]? Bytes(string file) => Files.Bytes(file);

    private static bool Is(string file, string[] endings) => endings.Contains(Path.GetExtension(file).ToLowerInvariant());
}
