using ClassKit.Content.Diagnostics;
using ClassKit.Content.Recognition;
using ClassKit.Content.Rosters;
using ClassKit.Content.Sources;
using ClassKit.Content.Terms;
using ClassKit.Desk.Folders;
using ClassKit.Desk.Texts;
using ClassKit.Exercises.Cohorts;
using ClassKit.UseCases.Output.Writing;
using ClassKit.Wording.Notes;

namespace ClassKit.Desk.Kitchen;

/// <summary>
/// A list of students that is to take the place of a class's: read and held against what is there, before anything is written.
/// </summary>
/// <param name="File">Where it would lie.</param>
/// <param name="Content">Its bytes.</param>
/// <param name="Read">The students, or what is wrong with the list.</param>
/// <param name="Before">Those of the list as it is; empty if there is none.</param>
/// <param name="Breaks">What no longer holds with it.</param>
public sealed record NewRoster(
    string File,
    ReadOnlyMemory<byte> Content,
    Reading<Roster> Read,
    IReadOnlyList<Student> Before,
    IReadOnlyList<Diagnostic> Breaks
)
{
    /// <summary>What goes from a list to the next one of the same people where the next one has no such column.</summary>
    private static readonly string[] Carried = ["team", .. ArrangedRoster.Columns, Formerly];

    private const string Id = "id",
        Formerly = "formerly";

    private static readonly string[] Endings = [".csv", ".tsv", ".xlsx", ".ods"];

    /// <summary>So many lists from before stay beside the one that counts.</summary>
    public const int MostBefore = 3;

    /// <summary>The list as it is; null if there is none that can be read.</summary>
    public Roster? Known { get; init; }

    /// <summary>What goes over from the list as it is, a student each.</summary>
    public IReadOnlyList<string> Kept { get; init; } = [];

    /// <summary>Those whose id stands beside another name on the list as it is: the same people, or others.</summary>
    public IReadOnlyList<(Student Earlier, Student Now)> Renamed =>
        [
            .. Before
                .Join(Read.Model?.Students ?? [], earlier => earlier.Id, now => now.Id, (earlier, now) => (Earlier: earlier, Now: now))
                .Where(pair => !SamePerson.IsSurely(pair.Earlier, pair.Now)),
        ];

    /// <summary>
    /// Those of <see cref="Renamed"/> who are surely others: one list has the name under another id. Ids were given anew, and what was
    /// handed out and marked would go to another person.
    /// </summary>
    public IReadOnlyList<(Student Earlier, Student Now)> Moved =>
        [
            .. Renamed.Where(pair =>
                Before.Any(other => other.Id != pair.Now.Id && SamePerson.HasSameName(other, pair.Now))
                || Read.Model!.Students.Any(other => other.Id != pair.Earlier.Id && SamePerson.HasSameName(pair.Earlier, other))
            ),
        ];

    /// <summary>Those who would be new people, and have the address or the name of somebody who would be gone.</summary>
    public IReadOnlyList<(Student Earlier, Student Now)> UnderOtherIds => SamePerson.UnderOtherIds(Gone, New);

    /// <summary>True if the list is a plain table, in which can be written what is known of somebody.</summary>
    public bool IsPlain => Read.Model is { } roster && ArrangedRoster.Cells(Text, roster.Students) is not null;

    private string Text => new OwnText(File, Content).Text;

    /// <summary>
    /// The arrangements of the list as it is that this one has otherwise or not at all, a student each, what was and what would be.
    /// </summary>
    public IReadOnlyList<string> ArrangedOtherwise =>
        [
            .. from now in Read.Model?.Students ?? []
            where Known is not null && Before.Any(earlier => earlier.Id == now.Id)
            let was = ArrangementWords.Of(Known!.ArrangementOf(now.Id))
            let becomes = ArrangementWords.Of(Read.Model!.ArrangementOf(now.Id))
            where was.Length > 0 && was != becomes
            select $"{now.Shown}: {was}, and now {(becomes.Length > 0 ? becomes : "nothing")}",
        ];

    /// <summary>
    /// The list with what is known of its people: their ids, where they stand under others, what they were called, and what was arranged
    /// with them where this list has no column for it.
    /// </summary>
    /// <param name="folder">The teaching folder.</param>
    /// <param name="known">The class.</param>
    /// <param name="areSame">Whether those of <see cref="UnderOtherIds"/> stay who they are.</param>
    public NewRoster Settled(TeachingFolder folder, ClassEntry known, bool areSame)
    {
        ArgumentNullException.ThrowIfNull(folder);
        ArgumentNullException.ThrowIfNull(known);
        if (!IsPlain || Before.Count == 0)
            return this;
        var (students, text) = (Read.Model!.Students, Text);
        var moved = areSame ? UnderOtherIds.ToDictionary(pair => pair.Now.Id, pair => pair.Earlier) : [];
        var called = Renamed.ToDictionary(pair => pair.Now.Id, pair => pair.Earlier);
        Student? Earlier(Student now) => moved.GetValueOrDefault(now.Id) ?? Before.FirstOrDefault(one => one.Id == now.Id);
        var was =
            known.Roster is { } list && OwnText.Read(list) is { } old && Known is not null
                ? ArrangedRoster.Cells(old.Text, Known.Students)
                : null;
        string Was(Student now, string column) => was is not null && Earlier(now) is { } who ? was(who, column) : "";
        List<string> over = [.. Carried.Where(column => !ArrangedRoster.Has(text, students, column))];
        var here = ArrangedRoster.Cells(text, students)!;
        var whole = ArrangedRoster.With(
            text,
            students,
            [.. moved.Count > 0 ? [Id] : (string[])[], .. over, .. over.Contains(Formerly) ? (string[])[] : [Formerly]],
            (now, column) =>
                column == Id ? moved.GetValueOrDefault(now.Id)?.Id ?? now.Id
                : column == Formerly && called.TryGetValue(now.Id, out var earlier)
                    ? string.Join(
                        "; ",
                        new[] { earlier.Name, earlier.Formerly, here(now, Formerly) }.Where(name => !string.IsNullOrEmpty(name)).Distinct()
                    )
                : over.Contains(column) ? Was(now, column)
                : here(now, column)
        )!;
        if (whole == text)
            return this;
        var content = new OwnText(File, Content).With(whole);
        var changed = new Library(new ChangedTree(PathTree.Instance.Full(File), content));
        var read = RosterReader.Read(changed.At(File), known.Profile.Model?.Name);
        return this with
        {
            Content = content,
            Read = read,
            Breaks = read.Succeeded ? [.. Broken(folder, File, known, changed)] : [],
            Kept =
            [
                .. from now in students
                let cells = over.Where(column => Was(now, column).Length > 0).ToList()
                where cells.Count > 0
                select $"{now.Shown}: {string.Join(", ", cells.Select(column => $"{column} {Was(now, column)}"))}",
            ],
        };
    }

    /// <summary>The titles of what is left aside, but for a number that only counts the lines.</summary>
    public IReadOnlyList<string> LeftAside =>
        Read.Model?.Origin is { } origin ? [.. origin.LeftAside.Where(title => title != origin.Counting)] : [];

    /// <summary>
    /// The list without the columns that nothing reads: what a school knows of somebody besides, such as their birthday and their illnesses,
    /// lies nowhere without need. The same where it is no plain table.
    /// </summary>
    /// <param name="folder">The teaching folder.</param>
    /// <param name="known">The class.</param>
    public NewRoster OnlyTaken(TeachingFolder folder, ClassEntry known)
    {
        ArgumentNullException.ThrowIfNull(folder);
        ArgumentNullException.ThrowIfNull(known);
        if (Read.Model is not { } roster || ArrangedRoster.OnlyTaken(Text, roster.Students) is not { } less)
            return this;
        var content = new OwnText(File, Content).With(less);
        var changed = new Library(new ChangedTree(PathTree.Instance.Full(File), content));
        var read = RosterReader.Read(changed.At(File), known.Profile.Model?.Name);
        return this with { Content = content, Read = read, Breaks = read.Succeeded ? [.. Broken(folder, File, known, changed)] : [] };
    }

    /// <summary>
    /// The same as <see cref="Breaks"/>, but for whoever would be gone and has marks in a file: by name, once a file.
    /// </summary>
    public IReadOnlyList<Diagnostic> BreaksByName
    {
        get
        {
            var gone = Gone.ToDictionary(student => NamedStudent.Unknown(student.Id), student => student.Shown, StringComparer.Ordinal);
            return
            [
                .. Breaks
                    .Where(problem => gone.ContainsKey(problem.Found))
                    .GroupBy(problem => problem.File)
                    .Select(file => new Diagnostic(
                        file.Key,
                        null,
                        $"Who would be gone has marks there: {string.Join("; ", file.Select(problem => gone[problem.Found]).Distinct())}",
                        "The term could not be read. Leave them on the list until the term is over, or take their lines out of that file first."
                    )),
                .. Breaks.Where(problem => !gone.ContainsKey(problem.Found)),
            ];
        }
    }

    /// <summary>Those who are not on the list as it is.</summary>
    public IReadOnlyList<Student> New => [.. (Read.Model?.Students ?? []).Where(student => Before.All(other => other.Id != student.Id))];

    /// <summary>Those who are no longer on it.</summary>
    public IReadOnlyList<Student> Gone => [.. Before.Where(student => (Read.Model?.Students ?? []).All(other => other.Id != student.Id))];

    /// <summary>
    /// Reads one. A workbook becomes a plain table, in which what is arranged with somebody can be typed; only where the list as it is is a
    /// workbook already it stays one.
    /// </summary>
    /// <param name="folder">The teaching folder.</param>
    /// <param name="known">The class.</param>
    /// <param name="name">What the file was called: its ending says what it is.</param>
    /// <param name="content">Its bytes.</param>
    public static NewRoster Of(TeachingFolder folder, ClassEntry known, string name, byte[] content)
    {
        var ending = Endings.FirstOrDefault(one => name.EndsWith(one, StringComparison.OrdinalIgnoreCase));
        var file =
            known.Roster is { } old && Path.GetExtension(old).Equals(ending, StringComparison.OrdinalIgnoreCase)
                ? old
                : Path.Combine(Path.GetDirectoryName(known.File)!, "roster" + ending);
        var now = known.Roster is { } list ? RosterReader.Read(list).Model : null;
        var before = now?.Students ?? [];
        if (ending is null)
            return new(
                file,
                content,
                new(
                    null,
                    [
                        new(
                            name,
                            null,
                            "It is no list of students that can be read here",
                            $"Choose a file that ends in {string.Join(", ", Endings)}."
                        ),
                    ]
                ),
                before,
                []
            );
        var changed = new Library(new ChangedTree(PathTree.Instance.Full(file), content));
        var read = RosterReader.Read(changed.At(file), known.Profile.Model?.Name);
        if (
            read.Succeeded
            && Path.GetExtension(file) is ".xlsx" or ".ods"
            && known.Roster != file
            && PlainRoster.Of(changed.At(file)) is { } plain
            && Of(folder, known, "list.csv", plain) is { Read.Succeeded: true } asTable
            && asTable.Read.Model.Students.SequenceEqual(read.Model!.Students)
        )
            return asTable with { Read = read };
        return new(file, content, read, before, read.Succeeded ? [.. Broken(folder, file, known, changed)] : []) { Known = now };
    }

    /// <summary>The list that was there before the one that counts; null if none is kept.</summary>
    public static string? Previous(ClassEntry known)
    {
        ArgumentNullException.ThrowIfNull(known);
        return known.Roster is null
            ? null
            : Endings
                .SelectMany(ending => Directory.EnumerateFiles(Path.GetDirectoryName(known.Roster)!, $"previous-*-1{ending}"))
                .OrderByDescending(System.IO.File.GetLastWriteTimeUtc)
                .FirstOrDefault();
    }

    /// <summary>Puts it there, and the list before beside it under another name; all of that, or nothing.</summary>
    /// <returns>Why it was not written; null if it was.</returns>
    public Diagnostic? Write(ClassEntry known)
    {
        ArgumentNullException.ThrowIfNull(known);
        var whole = Path.Combine(Path.GetDirectoryName(File)!, "." + Path.GetFileName(File) + ".new");
        try
        {
            System.IO.File.WriteAllBytes(whole, Content.Span);
            var (moves, last) = known.Roster is { } old ? Aside(old) : ([], null);
            if (last is not null)
                TakeAway(last);
            FileMoves.All([.. moves, (whole, File)]);
            if (last is not null)
                TakeAway(last);
            return null;
        }
        catch (Exception failure) when (failure is IOException or UnauthorizedAccessException)
        {
            return new(
                File,
                null,
                $"It could not be written: {failure.Message}",
                "Check that there is room, that no other list of that name lies there, and that no other program has the list open. The list is as it was."
            );
        }
        finally
        {
            // Names of students lie nowhere that nobody sees.
            TakeAway(whole);
        }
    }

    private static void TakeAway(string whole)
    {
        try
        {
            System.IO.File.Delete(whole);
        }
        catch (Exception failure) when (failure is IOException or UnauthorizedAccessException)
        {
            // The list counts or was refused whatever becomes of this one.
        }
    }

    /// <summary>
    /// The newest is the first, each before it one further on, and the last goes: names of students lie nowhere without end.
    /// </summary>
    /// <returns>Which files get which names, in order, and the one that is to go after that; null for none.</returns>
    private static (IReadOnlyList<(string From, string To)> Moves, string? Last) Aside(string old)
    {
        string Named(int number, string kind = "") =>
            Path.Combine(
                Path.GetDirectoryName(old)!,
                string.Create(
                    System.Globalization.CultureInfo.InvariantCulture,
                    $"previous-{Path.GetFileNameWithoutExtension(old)}-{kind}{number}{Path.GetExtension(old)}"
                )
            );
        List<int> there = [.. Enumerable.Range(1, MostBefore).Where(number => System.IO.File.Exists(Named(number)))];
        var last = there.Contains(MostBefore) ? Named(MostBefore, "leaving-") : null;
        return (
            [
                .. last is null ? (IEnumerable<(string, string)>)[] : [(Named(MostBefore), last)],
                .. Enumerable.Range(1, MostBefore - 1).Reverse().Where(there.Contains).Select(number => (Named(number), Named(number + 1))),
                (old, Named(1)),
            ],
            last
        );
    }

    /// <summary>
    /// Terms that hold now and would not then. A list of another name is not the one that they name, and breaks nothing of theirs.
    /// </summary>
    private static IEnumerable<Diagnostic> Broken(TeachingFolder folder, string file, ClassEntry known, Library changed)
    {
        foreach (var term in folder.PathsOf(ContentKind.Term).Where(_ => known.Roster is not null && known.Roster != file))
        {
            if (TermReader.Read(Library.OfPaths().At(term)) is { Succeeded: true } read && read.Model.Inputs.Contains(known.Roster!))
                yield return new(
                    term,
                    null,
                    $"The term names `{Path.GetFileName(known.Roster)}` as its list",
                    $"Write `{Path.GetFileName(file)}` there instead."
                );
        }
        foreach (var problem in Holding.Broken(folder, changed))
            yield return problem;
    }
}
