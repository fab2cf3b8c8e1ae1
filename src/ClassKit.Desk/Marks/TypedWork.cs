using ClassKit.Content.Diagnostics;
using ClassKit.Content.Sources;
using ClassKit.Content.Terms;
using ClassKit.Desk.Folders;
using ClassKit.Desk.Texts;
using ClassKit.Exercises.Cohorts;
using ClassKit.UseCases.Output.Writing;

namespace ClassKit.Desk.Marks;

/// <summary>The column of a work in the table of marks, and that of its resit.</summary>
/// <param name="term">The term.</param>
/// <param name="work">The work.</param>
public sealed class TypedWork(TermEntry term, PlannedWork work)
{
    private string? File { get; } = term.Plan.Model?.Marks is { } named ? Path.GetFullPath(named) : null;

    private IReadOnlyList<Student> Students => term.Plan.Model?.Class.Students ?? [];

    /// <summary>The table as it is; empty where the term names none.</summary>
    public string Stamp => Table?.Stamp ?? "";

    /// <summary>True where the term names a table.</summary>
    public bool HasTable => File is not null;

    private OwnText? Table => File is { } file ? OwnText.Read(file) : null;

    /// <summary>What a field of the form is called.</summary>
    public static string Field(string student, int sitting) =>
        string.Create(System.Globalization.CultureInfo.InvariantCulture, $"m{sitting}.{student}");

    /// <summary>What the field is called in which a word is chosen.</summary>
    public static string WordField(string student, int sitting) =>
        string.Create(System.Globalization.CultureInfo.InvariantCulture, $"w{sitting}.{student}");

    /// <summary>The words that stand in place of a mark, by students' ids.</summary>
    public IReadOnlyDictionary<string, string> InPlace(int sitting) =>
        Cells(sitting)
            .Select(cell => (cell.Key, TypedCell.Of(cell.Value).Word))
            .Where(said => TypedCell.InPlace.Contains(said.Word))
            .ToDictionary(said => said.Key, said => said.Word);

    /// <summary>What stands in the table, by students' ids.</summary>
    public IReadOnlyDictionary<string, string> Cells(int sitting) =>
        Table is { } table ? StudentTable.Column(table.Bytes.ToArray(), Students, Column(sitting)) : new Dictionary<string, string>();

    /// <summary>Keeps what was typed.</summary>
    /// <param name="stamp">The table as the instructor saw it.</param>
    /// <param name="typed">What was typed for a student and a sitting.</param>
    /// <returns>Why it was not kept; empty if it was.</returns>
    public IReadOnlyList<Diagnostic> Keep(string stamp, Func<string, int, string> typed)
    {
        ArgumentNullException.ThrowIfNull(typed);
        if (File is not { } file || Table is not { } table)
            return
            [
                new(
                    term.File,
                    null,
                    "The term names no table of marks",
                    "Write `marks: marks.csv` at the top of its file, and put an empty table of that name beside it."
                ),
            ];
        if (stamp != table.Stamp)
            return [table.Meanwhile(Differing(typed))];
        var had = Cells(2).Count > 0 || Students.Any(student => typed(student.Id, 2).Length > 0);
        var content = StudentTable.With(table.Bytes.ToArray(), Students, had ? [Column(1), Column(2)] : [Column(1)], (student, column) =>
            Number(typed(student.Id, column == Column(1) ? 1 : 2))
        );
        var read = TermReader.Read(new Library(new ChangedTree(PathTree.Instance.Full(file), content)).At(term.File));
        return !read.Succeeded ? read.Problems
            : table.Write(stamp, content) is { } refused ? [refused]
            : [];
    }

    /// <summary>
    /// Takes the work's columns out of the table, for a table has no column that its term does not know; the table as it was stays beside
    /// it, so that no mark is lost.
    /// </summary>
    /// <returns>Why it was not done; empty if it was, or nothing of the work stood there.</returns>
    public IReadOnlyList<Diagnostic> TakeOut()
    {
        if (File is not { } file || Table is not { } table)
            return [];
        if (StudentTable.Without(table.Bytes.ToArray(), [Column(1), Column(2)]) is not { } content)
            return [];
        try
        {
            var folder = Path.GetDirectoryName(file)!;
            var kept = FreeName.In(folder, number => $"{Path.GetFileNameWithoutExtension(file)} before {number}{Path.GetExtension(file)}");
            WholeFile.Write(Path.Combine(folder, kept), table.Bytes.ToArray());
        }
        catch (Exception failure) when (failure is IOException or UnauthorizedAccessException)
        {
            return
            [
                new(
                    file,
                    null,
                    $"What stands in it could not be kept beside it: {failure.Message}",
                    "Nothing was taken out. Check that there is room, and try again."
                ),
            ];
        }
        return table.Write(table.Stamp, content) is { } refused ? [refused] : [];
    }

    private IEnumerable<string> Differing(Func<string, int, string> typed)
    {
        foreach (var sitting in new[] { 1, 2 })
        {
            var cells = Cells(sitting);
            foreach (
                var student in Students.Where(student => Number(typed(student.Id, sitting)) != cells.GetValueOrDefault(student.Id, ""))
            )
                yield return $"{student.Shown}{(sitting == 2 ? ", resit" : "")}: {(typed(student.Id, sitting) is { Length: > 0 } text ? text : "nothing")}";
        }
    }

    private string Column(int sitting) => sitting == 1 ? work.Title : work.Title + " resit";

    /// <summary>Whoever types a comma for the decimal sign means it.</summary>
    private static string Number(string typed) => typed.Replace(',', '.');
}
