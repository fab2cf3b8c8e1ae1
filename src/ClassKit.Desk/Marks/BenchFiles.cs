using ClassKit.Content.Diagnostics;
using ClassKit.Content.Rubrics;
using ClassKit.Content.Sources;
using ClassKit.Content.Terms;
using ClassKit.Desk.Folders;
using ClassKit.Desk.Texts;
using ClassKit.Terms.Bench;
using ClassKit.UseCases.BenchMarks;
using ClassKit.UseCases.Output.Writing;

namespace ClassKit.Desk.Marks;

/// <summary>
/// What was seen at the bench, in the files beside a term: typed here as a table, or brought back as a page or a workbook saved it.
/// </summary>
/// <param name="Term">The term.</param>
/// <param name="Work">The work, which is one at the bench.</param>
/// <param name="Whose">Whose marks.</param>
internal sealed record BenchFiles(TermEntry Term, PlannedWork Work, Sitting Whose)
{
    /// <summary>The column of what was written of somebody.</summary>
    public const string Comment = "comment";

    private static readonly string[] Endings = [".json", ".xlsx", ".ods", ".csv", ".tsv"];

    private string Folder => Path.GetDirectoryName(Term.File)!;

    /// <summary>The rubric that the work is marked by, in the folder or one that ships.</summary>
    public string Rubric => Work.Rubric!;

    /// <summary>The form of the work for its class, or what is wrong with what it is made of.</summary>
    public Reading<BenchForm> Form(ClassEntry known)
    {
        var request = MakeBenchForm.Read(Rubric, known.File, known.Roster);
        return request.Succeeded
            ? new(MakeBenchForm.Run(request.Model, UseCases.Running.Run.Unwatched) with { NotAsked = Work.NotAsked }, [])
            : new(null, request.Problems);
    }

    /// <summary>The file that the term names now; null if none.</summary>
    public string? Named => Whose.FileOf(Work) is { } named ? Path.GetFullPath(named) : null;

    /// <summary>How what was seen is kept now: another text when it is changed; empty where nothing is.</summary>
    public string Stamp =>
        Named is { } file && File.Exists(file)
            ? Path.GetFileName(file) + Convert.ToHexString(System.Security.Cryptography.SHA256.HashData(File.ReadAllBytes(file)))
            : "";

    /// <summary>Who is not marked in every criterion, with what is missing, and what else of a form could not be used.</summary>
    public IReadOnlyList<string> Open(BenchForm form)
    {
        var begun = Whose.In(Work)?.Begun ?? new Dictionary<string, IReadOnlyList<int?>>();
        var missing = form
            .Students.Where(student => begun.ContainsKey(student.Id))
            .Select(student =>
                $"{student.Shown}: {string.Join(", ", form.Scale.Criteria.Where((_, at) => begun[student.Id][at] is null).Select(criterion => criterion.Name))}"
            );
        // A table's own doubts say the same with lines and ids.
        var told =
            Named is { } file && !IsTable(file)
                ? Term
                    .Plan.Doubts.Where(doubt =>
                        doubt.Weight == Weight.Doubtful
                        && Path.GetFullPath(doubt.File) == file
                        && !begun.Keys.Any(id =>
                            form.Students.Any(student =>
                                student.Id == id && doubt.Found.StartsWith(student.Shown, StringComparison.Ordinal)
                            )
                        )
                    )
                    .Select(doubt => $"{doubt.Found}. {doubt.Expected}")
                : [];
        return [.. missing, .. told];
    }

    /// <summary>What else is good to know of the file, such as who has left the class since.</summary>
    public IReadOnlyList<string> Noted =>
        Named is { } file
            ?
            [
                .. Term
                    .Plan.Doubts.Where(doubt => doubt.Weight == Weight.Noted && Path.GetFullPath(doubt.File) == file)
                    .Select(doubt => $"{doubt.Found}. {doubt.Expected}"),
            ]
            : [];

    /// <summary>Keeps what was typed, as a table.</summary>
    /// <param name="form">The form.</param>
    /// <param name="cell">What was typed for a student in a criterion, or as the comment.</param>
    /// <returns>Why it was not kept; empty if it was.</returns>
    public IReadOnlyList<Diagnostic> Type(BenchForm form, Func<string, string, string> cell)
    {
        var file = Named is { } named && IsTable(named) && IsOurs(named) ? named : Free(".csv");
        var before = File.Exists(file) ? File.ReadAllBytes(file) : null;
        List<string> columns = [.. form.Scale.Criteria.Select(criterion => criterion.Name), Comment];
        return Keep(form, file, StudentTable.With(before, form.Students, columns, (student, column) => cell(student.Id, column)));
    }

    /// <summary>What a file says that was brought back, or why it cannot be used; nothing is written.</summary>
    /// <param name="form">The form.</param>
    /// <param name="name">What the browser calls it: its ending says what it is.</param>
    /// <param name="content">Its bytes.</param>
    public Reading<BroughtBack> Bring(BenchForm form, string name, byte[] content)
    {
        if (Endings.FirstOrDefault(known => name.EndsWith(known, StringComparison.OrdinalIgnoreCase)) is not { } ending)
            return new(
                null,
                [
                    new(
                        Path.GetFileName(name),
                        null,
                        "It is neither the file that the page saved nor a workbook",
                        "Bring back what the page saved (it ends in .json), the workbook, or a table."
                    ),
                ]
            );
        var file = Free(ending);
        var read = Read(form, file, content);
        return read.Succeeded ? new(new(file, content, read.Model, Stands), []) : new(null, read.Problems);
    }

    /// <summary>Takes in what was brought back: together with what stands there, or as it is where nothing does.</summary>
    /// <param name="form">The form.</param>
    /// <param name="brought">What was brought back.</param>
    /// <param name="away">The ids of those of whom a word stands in place of a mark.</param>
    /// <param name="replaces">Whether it counts where a level stands there already.</param>
    /// <returns>Why it was not kept; empty if it was.</returns>
    public IReadOnlyList<Diagnostic> TakeIn(BenchForm form, BroughtBack brought, IReadOnlySet<string> away, bool replaces)
    {
        if (brought.Stands is not { } stands)
            return Keep(form, brought.File, brought.Content);
        var both = BenchMerge.Of(form, stands, brought.Sheet, away, replaces).Sheet;
        return Keep(
            form,
            Free(".csv"),
            StudentTable.With(
                null,
                form.Students,
                [.. form.Scale.Criteria.Select(criterion => criterion.Name), Comment],
                (student, column) =>
                    column == Comment ? both.Comments.GetValueOrDefault(student.Id, "")
                    : both.LevelOf(student.Id, form.Scale.Criteria.Index().First(one => one.Item.Name == column).Index) is { } level
                        ? form.Scale.LevelNames[level]
                    : ""
            )
        );
    }

    /// <summary>What stands there; null where that is nothing.</summary>
    private BenchSheet? Stands =>
        Whose.In(Work) is { } sheet && sheet.Places.Count + sheet.Begun.Count + sheet.Comments.Count > 0 ? sheet : null;

    /// <summary>Files of this work that lie beside the term and counted before, the newest first, each with how many were marked.</summary>
    public IReadOnlyList<(string File, int Marked)> Earlier(BenchForm form) =>
        [
            .. from ending in Endings
            from file in Directory.EnumerateFiles(Folder, $"{OfTitle}*{ending}")
            where file != Named && IsOfWork(file)
            orderby File.GetLastWriteTimeUtc(file) descending
            let read = Read(form, file, File.ReadAllBytes(file))
            where read.Succeeded
            select (file, read.Model!.Places.Count),
        ];

    /// <summary>Lets an earlier file count again; the one that counted stays where it is.</summary>
    public IReadOnlyList<Diagnostic> GoBack(BenchForm form, string name) =>
        Earlier(form).Select(one => one.File).FirstOrDefault(file => Path.GetFileName(file) == name) is { } file
            ? TermText.Keep(Term.File, null, text => TermText.WithCell(text, Work, Whose.Column, BeginTerm.Beside(Folder, file)))
            : [new(name, null, "It does not lie there any more", "Look at the page anew.")];

    /// <summary>By its name: as files are called that are written here, or, for the first marker, after the work alone.</summary>
    private bool IsOfWork(string file) =>
        new[] { Plain, Whose == Sitting.First ? OfTitle : Plain }.Any(stem =>
            Path.GetFileNameWithoutExtension(file) is var name
            && name.StartsWith(stem, StringComparison.OrdinalIgnoreCase)
            && name[stem.Length..] is var behind
            && (behind.Length == 0 || (behind[0] == '-' && behind.Length > 1 && behind.Skip(1).All(char.IsAsciiDigit)))
        );

    private string OfTitle => PlainKey.OfFile(Work.Title.ToLowerInvariant());

    private string Plain => $"{OfTitle}-{Whose.Key}";

    private Reading<BenchSheet> Read(BenchForm form, string file, byte[] content)
    {
        var library = new Library(new ChangedTree(PathTree.Instance.Full(file), content));
        var rubric = PracticalRubricReader.Read(library.At(Rubric));
        return rubric.Succeeded ? BenchFormReader.ReadAny(library.At(file), rubric.Model, form) : new(null, rubric.Problems);
    }

    private IReadOnlyList<Diagnostic> Keep(BenchForm form, string file, byte[] content)
    {
        var read = Read(form, file, content);
        if (!read.Succeeded)
            return read.Problems;
        try
        {
            WholeFile.Write(file, content);
        }
        catch (Exception failure) when (failure is IOException or UnauthorizedAccessException)
        {
            return
            [
                new(
                    file,
                    null,
                    $"It could not be written: {failure.Message}",
                    "Check that there is room, and that no other program has the file open."
                ),
            ];
        }
        return Named == file
            ? []
            : TermText.Keep(Term.File, null, text => TermText.WithCell(text, Work, Whose.Column, BeginTerm.Beside(Folder, file)));
    }

    /// <summary>A name beside the term that is not taken: nothing that was brought back is ever written over.</summary>
    private string Free(string ending) =>
        Path.Combine(
            Folder,
            FreeName.In(Folder, Plain + ending, number =>
                string.Create(System.Globalization.CultureInfo.InvariantCulture, $"{Plain}-{number}{ending}")
            )
        );

    private bool IsOurs(string file) => file.StartsWith(Folder + Path.DirectorySeparatorChar, StringComparison.Ordinal);

    private static bool IsTable(string file) => Path.GetExtension(file).ToLowerInvariant() is ".csv" or ".tsv";
}
