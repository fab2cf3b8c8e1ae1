using System.Globalization;
using ClassKit.Content.Diagnostics;
using ClassKit.Content.Recognition;
using ClassKit.Content.Sources;
using ClassKit.Content.Terms;
using ClassKit.Desk.Folders;
using ClassKit.Desk.Serving;
using ClassKit.UseCases.Output.Writing;

namespace ClassKit.Desk.Marks;

/// <summary>Begins the description of a term in the folder: a plain file, with the table of marks beside it.</summary>
internal static class BeginTerm
{
    /// <summary>Below it lie the terms.</summary>
    private const string Terms = "terms";

    /// <summary>Begins one with what was ticked.</summary>
    /// <returns>Why not; empty if it is there.</returns>
    public static IReadOnlyList<Diagnostic> Run(Visit visit, ClassEntry known, IReadOnlyList<RoundState> judged)
    {
        var title = OneLine.Of(visit.Typed("title"));
        if (title.Length is 0 or > 120)
            return [new("title", null, "The term has no name, or a very long one", "Call it something like `How breads rise, autumn`.")];
        if (known.Roster is not { } roster)
            return [new(known.File, null, "Nobody is in the class yet", "Say who is in it first.")];
        var folder = Path.Combine(visit.Folder.Root, Terms, known.Key);
        var file = Path.Combine(folder, PlainKey.OfFile(title.ToLowerInvariant()) + ".md");
        if (File.Exists(file))
            return [new(file, null, "There is a term of that name already", "Give this one another name.")];
        var made = !Directory.Exists(folder);
        try
        {
            Directory.CreateDirectory(folder);
            var rule = visit.Folder.PathsOf(ContentKind.GradeRule) is [var own, ..] ? own : OwnRubric.Put(visit.Folder, OwnRubric.Rule);
            List<string> rows =
            [
                .. judged
                    .Where(state => visit.All("round").Contains(state.Round.Name))
                    .Select(state =>
                        Row(
                            state.Dealt.LessonTitle + " " + state.Round.Number,
                            "calculations",
                            "Calculations",
                            "",
                            Beside(folder, state.Round.Graded)
                        )
                    ),
            ];
            if (visit.Ticked("bench"))
                rows.Add(Row("Bench work 1", "bench work", "Bench work", Beside(folder, Rubric(visit)), ""));
            if (visit.Ticked("written"))
                rows.Add(Row("Written questions", "written answers", "Written work", "20", ""));
            if (rows.Count == 0)
                return
                [
                    new(
                        "work",
                        null,
                        "No work was ticked",
                        "Tick at least one: a term without any weighs nothing. You can add and change everything later."
                    ),
                ];
            // A table of its own: the columns of another term's works are unknown to this one, and the other way round.
            var table = FreeName.In(folder, "marks.csv", number => string.Create(CultureInfo.InvariantCulture, $"marks-{number}.csv"));
            var marks = Path.Combine(folder, table);
            WholeFile.Write(marks, "student\n"u8);
            var text =
                $"---\nclass: {Quoted(folder, known.File)}\nroster: {Quoted(folder, roster)}\nrule: {Quoted(folder, rule)}\nmarks: {table}\n---\n\n# {title}\n\n## Work\n\n| Work | Kind | Category | Out of | Marks | Resit | Second marker |\n|---|---|---|---|---|---|---|\n{string.Concat(rows)}";
            var content = System.Text.Encoding.UTF8.GetBytes(text);
            var read = TermReader.Read(new Library(new Texts.ChangedTree(PathTree.Instance.Full(file), content)).At(file));
            if (read.Succeeded)
                WholeFile.Write(file, content);
            else
                File.Delete(marks);
            return read.Problems;
        }
        catch (Exception failure) when (failure is IOException or UnauthorizedAccessException)
        {
            return
            [
                new(
                    folder,
                    null,
                    $"The term could not be begun: {failure.Message}",
                    made
                        ? "Check that there is room and that you may write there."
                        : "Close the program that has its files open, and try again."
                ),
            ];
        }
    }

    /// <summary>The criteria that were chosen: one's own, or those that come with the program.</summary>
    public static string Rubric(Visit visit) =>
        visit.Folder.PathOf(ContentKind.PracticalRubric, visit.Typed("rubric")) ?? OwnRubric.Put(visit.Folder, OwnRubric.Bench);

    /// <summary>A path as it stands in a file of a folder.</summary>
    public static string Beside(string folder, string path) => Path.GetRelativePath(folder, path).Replace('\\', '/');

    /// <summary>
    /// Names of files may hold signs that mean something in YAML (1.2.2, 7.3.1: in double quotes only two must be escaped).
    /// </summary>
    private static string Quoted(string folder, string path) =>
        Beside(folder, path) is var plain && plain.All(letter => char.IsAsciiLetterOrDigit(letter) || letter is '.' or '/' or '-' or '_')
            ? plain
            : $"\"{plain.Replace("\\", "\\\\", StringComparison.Ordinal).Replace("\"", "\\\"", StringComparison.Ordinal)}\"";

    private static string Row(string title, string kind, string category, string outOf, string marks) =>
        $"| {OneLine.Of(title)} | {kind} | {category} | {outOf} | {marks} | | |\n";
}
