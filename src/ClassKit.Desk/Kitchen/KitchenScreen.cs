using ClassKit.Content.Classes;
using ClassKit.Content.Diagnostics;
using ClassKit.Content.Recognition;
using ClassKit.Content.Rosters;
using ClassKit.Content.Sources;
using ClassKit.Desk.Folders;
using ClassKit.Desk.Names;
using ClassKit.Desk.Serving;
using ClassKit.Desk.Texts;
using ClassKit.Lessons.Classes;

namespace ClassKit.Desk.Kitchen;

/// <summary>A class and its kitchen, in a form: written back into the same lines of the same file.</summary>
internal static class KitchenScreen
{
    public static void AddTo(DeskRoutes routes)
    {
        routes.LookInside("class/{class}", visit => visit.InClass(known => Show(visit, known, known.Profile.Problems)));
        routes.TakeInside("class/{class}", visit => visit.InClass(known => Keep(visit, known)));
        routes.TakeInside("class/{class}/look", visit =>
            visit.InClass(known =>
                OwnText.Read(known.File) is { } file
                    ? visit.Show<LookedOver>((nameof(LookedOver.Problems), Worded(known, Typed(visit, known, file).Problems)))
                    : visit.Nothing()
            )
        );
    }

    private static Task Keep(Visit visit, ClassEntry known)
    {
        if (OwnText.Read(known.File) is not { } file)
            return visit.Nothing();
        if (visit.Typed("stamp") != file.Stamp)
            return Show(visit, known, [file.Meanwhile(Differing(visit, file.Text))]);
        var (text, _, read) = Typed(visit, known, file);
        if (!read.Succeeded)
            return Show(visit, known, read.Problems, text);
        if (NameOnRecord.Change(visit, known.Profile.Model?.Name, read.Model.Name) is { Count: > 0 } taken)
            return Show(visit, known, taken, text);
        return file.Write(visit.Typed("stamp"), file.With(text)) is { } refused
            ? Show(visit, known, [refused], text)
            : visit.GoTo($"class/{known.Key}?kept=yes");
    }

    /// <summary>The file as it would be, with all that is to be said of it: what is wrong, and what no longer holds with it.</summary>
    private static (string Text, IReadOnlyList<Diagnostic> Problems, Reading<ClassProfile> Read) Typed(
        Visit visit,
        ClassEntry known,
        OwnText file
    )
    {
        var text = file.Text;
        // Whoever chooses other measures types their numbers in those.
        var units = visit.Sent(ProfileField.Units);
        var degrees = units != FrontLines.Value(text, ProfileField.Units) ? ProfileValue.Degrees(units) : null;
        foreach (
            var field in ProfileField
                .Topics.SelectMany(topic => topic.Fields)
                .Where(field => !FrontLines.IsLong(text, field.Key) && visit.Sent(field.Name) is not null)
        )
        {
            // Control characters would begin a line of their own.
            var before = FrontLines.Value(text, field.Key);
            var typed = ProfileValue.InFile(
                field,
                new string([.. visit.Typed(field.Name).Where(letter => !char.IsControl(letter))]),
                before,
                before is null ? ProfileValue.Degrees(units) : degrees
            );
            if (typed != (before ?? ""))
                text = FrontLines.With(text, field.Key, typed);
        }
        var title = new string([.. visit.Typed("title").Where(letter => !char.IsControl(letter))]);
        if (title.Length > 0 && title != (TextHeading.Of(new StringReader(text)) ?? ""))
            text = TextHeading.With(text, title);
        var changed = new Library(new ChangedTree(PathTree.Instance.Full(known.File), file.With(text)));
        var read = ClassProfileReader.Read(changed.At(known.File));
        return (text, [.. read.Problems, .. read.Succeeded ? Holding.Broken(visit.Folder, changed) : []], read);
    }

    /// <summary>What is wrong with the class's file, by the labels of the form in place of keys and lines.</summary>
    private static IReadOnlyList<Diagnostic> Worded(ClassEntry known, IReadOnlyList<Diagnostic> problems)
    {
        var fields = ProfileField.Topics.SelectMany(topic => topic.Fields).ToList();
        string Words(string text) =>
            fields.Aggregate(text, (words, field) => words.Replace($"`{field.Key}`", $"“{field.Label}”", StringComparison.Ordinal));
        return
        [
            .. problems
                .Select(problem =>
                    problem.Line is not null && Path.GetFullPath(problem.File) == Path.GetFullPath(known.File)
                        ? problem with
                        {
                            File = "",
                            Line = null,
                            Found = Words(problem.Found),
                            Expected = Words(problem.Expected),
                        }
                        : problem
                )
                .Distinct(),
        ];
    }

    private static IEnumerable<string> Differing(Visit visit, string text) =>
        ProfileField
            .Topics.SelectMany(topic => topic.Fields)
            .Where(field =>
                !FrontLines.IsLong(text, field.Key)
                && visit.Sent(field.Name) is { } typed
                && typed != ProfileValue.Shown(field, FrontLines.Value(text, field.Key))
            )
            .Select(field => $"{field.Label}: {(visit.Typed(field.Name) is { Length: > 0 } typed ? typed : "nothing")}")
            .Concat(
                visit.Typed("title") is { Length: > 0 } title && title != TextHeading.Of(new StringReader(text))
                    ? [$"What it is called: {title}"]
                    : []
            );

    /// <param name="visit">The request.</param>
    /// <param name="known">The class.</param>
    /// <param name="problems">What is wrong.</param>
    /// <param name="typed">The file as it would be; null for as it is.</param>
    private static Task Show(Visit visit, ClassEntry known, IReadOnlyList<Diagnostic> problems, string? typed = null)
    {
        var file = OwnText.Read(known.File);
        var roster = known.Roster is { } list ? RosterReader.Read(list) : null;
        return visit.Show<KitchenPage>(
            (nameof(KitchenPage.Class), known),
            (nameof(KitchenPage.Text), typed ?? file?.Text ?? ""),
            (nameof(KitchenPage.Stamp), file?.Stamp ?? ""),
            (nameof(KitchenPage.Problems), Worded(known, problems)),
            (nameof(KitchenPage.Roster), roster),
            (nameof(KitchenPage.ProfileText), visit.Folder.TextAt(known.File)),
            (
                nameof(KitchenPage.PriceLists),
                (IReadOnlyList<string>)
                    [
                        .. visit
                            .Folder.PathsOf(ContentKind.PriceList)
                            .Select(file => Path.GetRelativePath(Path.GetDirectoryName(known.File)!, file).Replace('\\', '/')),
                    ]
            ),
            (nameof(KitchenPage.RosterText), visit.Folder.TextAt(known.Roster)),
            (nameof(KitchenPage.IsKept), visit.Typed("kept").Length > 0 && typed is null)
        );
    }
}
