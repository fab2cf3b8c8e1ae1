using ClassKit.Content.Checking;
using ClassKit.Content.Classes;
using ClassKit.Content.Diagnostics;
using ClassKit.Content.Recognition;
using ClassKit.Content.Sources;
using ClassKit.Desk.Folders;
using ClassKit.Desk.Names;
using ClassKit.Desk.Serving;

namespace ClassKit.Desk.Texts;

/// <summary>
/// The plain files of the folder, to be changed on a page: every problem at its line, and nothing written over what changed meanwhile.
/// </summary>
internal static class TextScreen
{
    public static void AddTo(DeskRoutes routes)
    {
        routes.LookInside("texts", visit =>
            visit.Show<TextsPage>(
                (nameof(TextsPage.Files), visit.Folder.Texts()),
                (nameof(TextsPage.Titles), visit.Desk.Kept.Get("titles of texts", visit.Folder.Stamp(), () => Titles(visit.Folder)))
            )
        );
        routes.LookInside("texts/{file}", visit =>
            With(visit, (entry, text) => Show(visit, entry, text, text.Text, Told(entry, text.Bytes.ToArray())))
        );
        routes.TakeInside("texts/{file}", visit => With(visit, (entry, text) => Keep(visit, entry, text)));
    }

    private static Dictionary<string, string> Titles(TeachingFolder folder) =>
        folder
            .Texts()
            .Select(entry => (entry.Key, Title: Title(entry.Path)))
            .Where(pair => pair.Title is { Length: > 0 })
            .ToDictionary(pair => pair.Key, pair => pair.Title!);

    /// <summary>The first heading of a text; null for tables, and for what cannot be read now.</summary>
    private static string? Title(string path)
    {
        if (!path.EndsWith(".md", StringComparison.OrdinalIgnoreCase))
            return null;
        try
        {
            using var text = new StreamReader(path);
            return TextHeading.Of(text);
        }
        catch (Exception failure) when (failure is IOException or UnauthorizedAccessException)
        {
            return null;
        }
    }

    private static Task Keep(Visit visit, TextEntry entry, OwnText text)
    {
        var typed = visit.Text("text");
        var content = text.With(typed);
        var told = Told(entry, content);
        if (!visit.Ticked("keep"))
            return Show(visit, entry, text, typed, told, visit.Typed("stamp"));
        if (UnmadeGrades(visit.Folder, entry, content) is { Count: > 0 } unmade)
            return Show(visit, entry, text, typed, [unmade[0], .. told.Count > 0 ? told : unmade.Skip(1)], visit.Typed("stamp"));
        if (
            visit.Folder.Classes().FirstOrDefault(known => known.File == entry.Path) is { } profile
            && NameOnRecord.Change(
                visit,
                profile.Profile.Model?.Name,
                ClassProfileReader
                    .Read(new Library(new ChangedTree(PathTree.Instance.Full(entry.Path), content)).At(entry.Path))
                    .Model?.Name
            )
                is { Count: > 0 } taken
        )
            return Show(visit, entry, text, typed, [.. taken, .. told], visit.Typed("stamp"));
        if (text.Write(visit.Typed("stamp"), content) is not { } refused)
            return visit.GoTo($"texts/{entry.Key}?kept=yes");
        // Read once: the stamp that goes back with the form is of the very text that is shown.
        var now = OwnText.Read(entry.Path);
        return Show(visit, entry, text, typed, [refused, .. told], now?.Stamp, now);
    }

    /// <summary>
    /// Why a rule is not kept: a term whose grades it makes now would have none, and somebody may have been given theirs. Other texts are
    /// kept with what is wrong in them.
    /// </summary>
    private static IReadOnlyList<Diagnostic> UnmadeGrades(TeachingFolder folder, TextEntry entry, byte[] content) =>
        folder.PathsOf(ContentKind.GradeRule).Contains(entry.Path)
        && Holding.Broken(folder, new(new ChangedTree(PathTree.Instance.Full(entry.Path), content))).ToList() is { Count: > 0 } broken
            ?
            [
                new(
                    entry.Path,
                    null,
                    "Nothing was written: the grades of a term are made by this rule, and would not be any more",
                    "Mend what is named next, and keep it again. What is in the file still holds."
                ),
                .. broken,
            ]
            : [];

    private static Task Show(
        Visit visit,
        TextEntry entry,
        OwnText text,
        string typed,
        IReadOnlyList<Diagnostic> told,
        string? stamp = null,
        OwnText? now = null
    ) =>
        visit.Show<TextPage>(
            (nameof(TextPage.Entry), entry),
            (nameof(TextPage.Typed), typed),
            (nameof(TextPage.Stamp), stamp ?? text.Stamp),
            (nameof(TextPage.Problems), told),
            (nameof(TextPage.InTheFile), now is not null && now.Stamp != visit.Typed("stamp") ? now.Text : null),
            (nameof(TextPage.IsKept), visit.Typed("kept").Length > 0),
            (nameof(TextPage.Classes), entry.Lesson is null ? [] : visit.Folder.Classes())
        );

    /// <summary>What is said of the file, and of the lesson that it belongs to.</summary>
    private static IReadOnlyList<Diagnostic> Told(TextEntry entry, byte[] content)
    {
        if (entry.IsNote)
            return [];
        var library = new Library(new ChangedTree(PathTree.Instance.Full(entry.Path), content));
        var check = ContentChecker.Check([entry.Lesson ?? entry.Path], library);
        return [.. check.Problems.Concat(check.Doubts).Where(problem => problem.Weight is Weight.Blocks or Weight.Doubtful)];
    }

    /// <summary>Answers for the file that the address names.</summary>
    public static Task With(Visit visit, Func<TextEntry, OwnText, Task> answer) =>
        visit.Folder.Texts().FirstOrDefault(entry => entry.Key == visit.Step("file")) is { } found && OwnText.Read(found.Path) is { } text
            ? answer(found, text)
            : visit.Nothing();
}
