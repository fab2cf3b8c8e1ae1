using ClassKit.Exercises.Cohorts;
using ClassKit.Exercises.Dealing;
using ClassKit.Notes;
using ClassKit.UseCases.Dealing;
using ClassKit.UseCases.Output;
using ClassKit.UseCases.Output.Writing;

namespace ClassKit.UseCases.Erasing;

/// <summary>The files of a teaching folder that name a student, and the step that takes the student out of them.</summary>
/// <remarks>
/// Files outside of the folder, and those that links lead to, are never looked at. Of what an instructor wrote, rows that are the student's
/// go, and nothing else.
/// </remarks>
public sealed class StudentFiles
{
    private const string Kind = "erase";

    private static readonly EnumerationOptions WithoutLinks = new()
    {
        RecurseSubdirectories = true,
        AttributesToSkip = FileAttributes.ReparsePoint,
    };

    private readonly string _folder;
    private readonly List<StudentTrace> _traces = [];
    private readonly Dictionary<OwnOutput, (List<OutputFile> Anew, HashSet<string> Gone)> _own = [];
    private readonly HashSet<OwnOutput> _ofNamesakes = [];
    private readonly List<string> _loose = [];
    private readonly List<PlannedFile> _tables = [];
    private readonly IReadOnlySet<string> _lists;

    private StudentFiles(string folder, IReadOnlySet<string> lists) => (_folder, _lists) = (folder, lists);

    /// <summary>Every file that names the student, in the order of paths.</summary>
    public IReadOnlyList<StudentTrace> Traces => [.. _traces.OrderBy(trace => trace.File, StringComparer.Ordinal)];

    /// <summary>Whom the class lists and deals of a folder call by an id; null for nobody.</summary>
    public static Student? Find(string folder, string id)
    {
        var files = All(folder);
        return KnownStudents
            .In(ClassLists.In(Path.GetFullPath(folder), files), Deals(files).Select(deal => deal.Model).OfType<DealtClass>())
            .FirstOrDefault(student => student.Id == id);
    }

    /// <summary>Looks through a folder; nothing is changed.</summary>
    /// <param name="folder">A teaching folder.</param>
    /// <param name="record">The folder's own record, there or not: what it says is told elsewhere.</param>
    /// <param name="who">The student.</param>
    public static StudentFiles Look(string folder, string record, Student who)
    {
        ArgumentNullException.ThrowIfNull(who);
        var files = All(folder);
        var found = new StudentFiles(Path.GetFullPath(folder), ClassLists.In(Path.GetFullPath(folder), files));
        var outputs = OwnOutput.In(files);
        var read = Deals(files);
        List<DealtClass> deals = [.. read.Select(deal => deal.Model).OfType<DealtClass>()];
        var known = KnownStudents.In(found._lists.Where(File.Exists), deals);
        var look = new StudentLook(
            new(
                known.FirstOrDefault(student => student.Id == who.Id) is { } listed && listed.Name != who.Name
                    ? who with
                    {
                        Shown = listed.Name,
                    }
                    : who,
                known
            ),
            new(found._folder, who)
        );
        foreach (var own in outputs)
        {
            var anew =
                own.Kind != OwnOutput.OfOneStudent ? MadeAnew.Of(own, who, deals)
                : own.Files.Paths.Any(path => look.Lines(Path.Combine(own.Root, path)) is not null)
                    ? new([], own.Files.Paths.ToHashSet(StringComparer.Ordinal))
                : MadeAnew.Nothing;
            found._own[own] = ([.. anew.Files], [.. anew.Gone]);
            if (IsOfNamesake(own, who, read))
                found._ofNamesakes.Add(own);
        }
        foreach (
            var file in files.Where(file =>
                !found.Shown(file).Split('/').Any(name => name.StartsWith(OwnPath.Hidden, StringComparison.Ordinal))
            )
        )
        {
            if (
                outputs.Select(own => (Own: own, Path: own.PathOf(file))).FirstOrDefault(one => one.Path is not null) is
                { Own: { } output, Path: { } path }
            )
                found.Sort(output, path, file, look);
            else if (OtherRecords.IsOne(record, file))
                found.Sort(file, OtherRecords.Names(file, who));
            else
                found.Sort(file, look);
        }
        // Of a deal that cannot be read nothing is made anew, and nobody knows whom it names.
        foreach (var deal in read.Where(deal => deal.Model is null).Select(deal => found.Shown(deal.File)))
        {
            if (found._traces.TrueForAll(trace => trace.File != deal))
                found._traces.Add(new StudentTrace.Unread(deal, []));
        }
        return found;
    }

    /// <summary>
    /// Takes the student out of all files but class lists: folders of ours one after another, each all or nothing; each other file by
    /// itself. Cut off in between, it goes on when it is done again.
    /// </summary>
    /// <exception cref="IOException">A file cannot be changed, or somebody else has changed it since it was looked at.</exception>
    /// <exception cref="UnauthorizedAccessException">A file must not be changed.</exception>
    internal void TakeOutOfFiles()
    {
        foreach (var (own, (anew, gone)) in _own.Where(own => own.Value.Anew.Count + own.Value.Gone.Count > 0))
            OutputFolder.Amend(own.Root, Kind, anew, gone);
        foreach (var file in _loose)
            File.Delete(file);
        Write(_tables.Where(table => !_lists.Contains(table.File)));
    }

    /// <summary>Takes the student out of class lists: last of all, for by these the student is known until then.</summary>
    /// <exception cref="IOException">As for other files.</exception>
    /// <exception cref="UnauthorizedAccessException">A file must not be changed.</exception>
    internal void TakeOutOfLists() => Write(_tables.Where(table => _lists.Contains(table.File)));

    private static void Write(IEnumerable<PlannedFile> tables)
    {
        foreach (var table in tables)
        {
            table.MustBeAsItWas();
            WholeFile.Write(table.File, table.Left);
        }
    }

    /// <summary>
    /// True of what was made of a deal, beside it or in its folder, that was dealt to another of the same name and not to the student: the
    /// name on its pages is that one's.
    /// </summary>
    private static bool IsOfNamesake(OwnOutput own, Student who, IEnumerable<(string File, DealtClass? Model)> read)
    {
        List<DealtClass?> deals =
        [
            .. read.Where(deal =>
                    Path.GetDirectoryName(deal.File) is { } place
                    && (place == own.Root || Path.GetDirectoryName(place) == Path.GetDirectoryName(own.Root))
                )
                .Select(deal => deal.Model),
        ];
        return deals.Count > 0
            && deals.TrueForAll(deal =>
                deal is not null
                && deal.Students.All(seat => seat.Who.Id != who.Id)
                && deal.Students.Any(seat => SamePerson.HasSameName(seat.Who, who))
            );
    }

    private static List<string> All(string folder) =>
        [.. Directory.EnumerateFiles(Path.GetFullPath(folder), "*", WithoutLinks).Order(StringComparer.Ordinal)];

    private static List<(string File, DealtClass? Model)> Deals(IEnumerable<string> files) =>
        [
            .. files
                .Where(file => Path.GetFileName(file) == DealtJson.FileName)
                .Select(file => (file, DealtFolder.Read(Path.GetDirectoryName(file)!).Model)),
        ];

    private string Shown(string file) => Path.GetRelativePath(_folder, file).Replace('\\', '/');

    private void Sort(OwnOutput own, string path, string file, StudentLook look)
    {
        var (anew, gone) = _own[own];
        if (anew.Exists(made => made.Path == path))
            _traces.Add(new StudentTrace.Anew(Shown(file)));
        else if (gone.Contains(path) || look.IsTheirsByName(path))
        {
            gone.Add(path);
            _traces.Add(new StudentTrace.Theirs(Shown(file)));
        }
        // Only a file that is as we left it stays ours: what was typed into one is never written over.
        else if (own.Files.At(path).IsChanged)
            SortOut(file, look);
        else if (own.Kind != OwnOutput.OfWholeRecord && StudentLook.IsTable(file) && look.Rows(file) is { } rows)
        {
            anew.Add(new(path, rows.Left));
            _traces.Add(new StudentTrace.Rows(Shown(file), rows.Count));
        }
        else if (!_ofNamesakes.Contains(own) && look.Lines(file) is not null)
            _traces.Add(new StudentTrace.MadeOfAll(Shown(file), own.Kind));
    }

    private void Sort(string file, StudentLook look)
    {
        if (!look.IsTheirs(file, Shown(file)))
        {
            SortOut(file, look);
            return;
        }
        _loose.Add(file);
        _traces.Add(new StudentTrace.Theirs(Shown(file)));
    }

    private void Sort(string record, bool? namesStudent)
    {
        if (namesStudent != false)
            _traces.Add(namesStudent is null ? new StudentTrace.Unread(Shown(record), []) : new StudentTrace.OtherRecord(Shown(record)));
    }

    /// <summary>A file that others stand in as well.</summary>
    private void SortOut(string file, StudentLook look)
    {
        var before = FileStamp.Of(file);
        if (look.Archive(file) is { } archive)
        {
            SortOut(file, before, archive);
            return;
        }
        var rows = look.Rows(file);
        if (rows is var (left, count))
        {
            _tables.Add(new(file, before, left));
            _traces.Add(new StudentTrace.Rows(Shown(file), count));
        }
        if (look.Lines(file) is { } lines && (rows is null || look.IsStillNamed(file, rows.Value.Left)))
            _traces.Add(new StudentTrace.Stays(Shown(file), lines) { IsInCells = look.IsNamedInCells(file) });
        else if (rows is null && look.IsUnread(file))
            _traces.Add(new StudentTrace.Unread(Shown(file), []));
    }

    private void SortOut(string file, FileStamp before, ArchiveTrace archive)
    {
        if (archive.Left is { } left)
        {
            _tables.Add(new(file, before, left));
            _traces.Add(new StudentTrace.Packed(Shown(file), archive.Files, archive.Tables));
        }
        if (archive.Still.Count > 0 || (archive.IsNamed && archive.Left is null))
            _traces.Add(new StudentTrace.Stays(Shown(file), []) { Inside = archive.Still });
        if (archive.Unread.Count > 0)
            _traces.Add(new StudentTrace.Unread(Shown(file), archive.Unread));
    }
}
