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
    private const string Comment = "comment";

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

    /// <summary>Keeps a file that was brought back.</summary>
    /// <param name="form">The form.</param>
    /// <param name="name">What the browser calls it: its ending says what it is.</param>
    /// <param name="content">Its bytes.</param>
    /// <returns>Why it was not kept; empty if it was.</returns>
    public IReadOnlyList<Diagnostic> Bring(BenchForm form, string name, byte[] content) =>
        Endings.FirstOrDefault(known => name.EndsWith(known, StringComparison.OrdinalIgnoreCase)) is { } ending
            ? Keep(form, Free(ending), content)
            :
            [
                new(
                    Path.GetFileName(name),
                    null,
                    "It is neither the file that the page saved nor a workbook",
                    "Bring back what the page saved (it ends in .json), the workbook, or a table."
                ),
            ];

    private IReadOnlyList<Diagnostic> Keep(BenchForm form, string file, byte[] content)
    {
        var library = new Library(new ChangedTree(PathTree.Instance.Full(file), content));
        var rubric = PracticalRubricReader.Read(library.At(Rubric));
        if (!rubric.Succeeded)
            return rubric.Problems;
        var read = BenchFormReader.ReadAny(library.At(file), rubric.Model, form);
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
    private string Free(string ending)
    {
        var plain = Path.Combine(Folder, $"{PlainKey.OfFile(Work.Title.ToLowerInvariant())}-{Whose.Key}");
        var file = plain + ending;
        for (var number = 2; Path.Exists(file); number++)
            file = string.Create(System.Globalization.CultureInfo.InvariantCulture, $"{plain}-{number}{ending}");
        return file;
    }

    private bool IsOurs(string file) => file.StartsWith(Folder + Path.DirectorySeparatorChar, StringComparison.Ordinal);

    private static bool IsTable(string file) => Path.GetExtension(file).ToLowerInvariant() is ".csv" or ".tsv";
}
