using ClassKit.Content.Diagnostics;
using ClassKit.Content.Sources;
using ClassKit.Content.Terms;
using ClassKit.Desk.Texts;

namespace ClassKit.Desk.Marks;

/// <summary>The text of a term, changed line by line, and written only if the term then holds.</summary>
internal static class TermText
{
    private const string Heading = "## Work";

    /// <summary>The text with a work more.</summary>
    public static string? WithWork(string text, IReadOnlyDictionary<string, string> cells) => TableLines.WithRow(text, Heading, cells);

    /// <summary>The text with another cell in a work's row.</summary>
    public static string? WithCell(string text, PlannedWork work, string column, string value) =>
        TableLines.WithCell(text, Heading, work.Title, column, value);

    /// <summary>The text without a work.</summary>
    public static string? WithoutWork(string text, PlannedWork work) => TableLines.WithoutRow(text, Heading, work.Title);

    /// <summary>Writes a change.</summary>
    /// <param name="file">The description of the term.</param>
    /// <param name="stamp">The file as the instructor saw it; null for as it is.</param>
    /// <param name="change">Changes the text; null where the text has no place for it.</param>
    /// <returns>Why nothing was written; empty if it was.</returns>
    public static IReadOnlyList<Diagnostic> Keep(string file, string? stamp, Func<string, string?> change)
    {
        if (OwnText.Read(file) is not { } text)
            return
            [
                new(
                    file,
                    null,
                    "The description of the term cannot be read",
                    "Look whether it is there, and that no other program has it open."
                ),
            ];
        if (change(text.Text) is not { } changed)
            return
            [
                new(
                    file,
                    null,
                    "The section `## Work` has no table that this could go into",
                    "Change the file’s text: the table begins `| Work | Kind | Category | Out of | Marks | Resit | Second marker |`."
                ),
            ];
        var content = text.With(changed);
        var read = TermReader.Read(new Library(new ChangedTree(PathTree.Instance.Full(file), content)).At(file));
        return !read.Succeeded ? read.Problems
            : text.Write(stamp ?? text.Stamp, content) is { } refused ? [refused]
            : [];
    }
}
