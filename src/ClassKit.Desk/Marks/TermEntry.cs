using ClassKit.Content.Diagnostics;
using ClassKit.Content.Recognition;
using ClassKit.Content.Sources;
using ClassKit.Content.Terms;
using ClassKit.Desk.Folders;

namespace ClassKit.Desk.Marks;

/// <summary>A term of a class: a file of the folder that says which work counts, and by which rule.</summary>
/// <param name="Key">How addresses call it.</param>
/// <param name="File">Where it is.</param>
/// <param name="Plan">What stands there, or what is wrong with it.</param>
public sealed record TermEntry(string Key, string File, Reading<TermPlan> Plan)
{
    /// <summary>What pages call it.</summary>
    public string Title => Plan.Model?.Title ?? Heading ?? Path.GetFileName(File);

    /// <summary>The file of the rule that it names; null if it names none.</summary>
    public string? RuleFile => Texts.OwnText.Read(File) is { } text ? Named(File, text.Text, "rule") : null;

    /// <summary>A term with a mistake in it still has its heading.</summary>
    private string? Heading => Texts.OwnText.Read(File) is { } text ? TextHeading.Of(new StringReader(text.Text)) : null;

    /// <summary>The terms whose class is this one.</summary>
    public static IReadOnlyList<TermEntry> Of(TeachingFolder folder, ClassEntry known)
    {
        ArgumentNullException.ThrowIfNull(folder);
        ArgumentNullException.ThrowIfNull(known);
        return
        [
            .. folder
                .Keyed(ContentKind.Term)
                .Where(item => IsOf(item.Path, known))
                .Select(item => new TermEntry(item.Key, item.Path, TermReader.Read(Library.OfPaths().At(item.Path)))),
        ];
    }

    /// <summary>A term with a mistake in it is a term of its class all the same, so that its page can say what it is.</summary>
    private static bool IsOf(string file, ClassEntry known) =>
        Texts.OwnText.Read(file) is { } text && Named(file, text.Text, "class") == Path.GetFullPath(known.File);

    /// <summary>The file that a line at the top names, from where the text lies.</summary>
    private static string? Named(string file, string text, string key) =>
        Texts.FrontLines.Value(text, key) is { Length: > 0 } named
            ? Path.GetFullPath(Path.Combine(Path.GetDirectoryName(file)!, named.Trim('"', '\'')))
            : null;
}
