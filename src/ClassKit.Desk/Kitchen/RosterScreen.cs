using System.Text;
using ClassKit.Content.Classes;
using ClassKit.Content.Diagnostics;
using ClassKit.Content.Sources;
using ClassKit.Desk.Folders;
using ClassKit.Desk.Serving;
using ClassKit.Desk.Texts;
using ClassKit.Exercises.Cohorts;
using ClassKit.UseCases.Recording;

namespace ClassKit.Desk.Kitchen;

/// <summary>A class's list of students, pasted or brought as a file: what it changes is said first.</summary>
internal static class RosterScreen
{
    private const string Page = "class/{class}/roster";

    /// <summary>More than any list has, in bytes.</summary>
    private const int MostBytes = 10 << 20;

    private const string Pasted = "pasted.csv";

    public static void AddTo(DeskRoutes routes)
    {
        routes.TakeInside(Page + "/paste", visit => visit.InClass(known => Paste(visit, known, visit.Text("names").Trim())));
        routes.TakeInside(Page + "/columns", visit =>
            visit.InClass(known =>
                PastedCells.Of(visit.Text("names").Trim('\n')) is { } cells
                    ? Look(
                        visit,
                        known,
                        Pasted,
                        Encoding.UTF8.GetBytes(
                            cells.Table(column =>
                                Enum.TryParse<RosterField>(visit.Typed(ColumnsPage.Field(column)), out var field) && Enum.IsDefined(field)
                                    ? FieldWords.Of(field)
                                    : null
                            )
                        )
                    )
                    : visit.Nothing()
            )
        );
        routes.Receive(Page + "/file", (visit, files) => visit.InClass(async known =>
            {
                var sent = await files.OnlyAsync(MostBytes, visit.Context.RequestAborted);
                await Look(visit, known, sent?.Name ?? "nothing", sent?.Content ?? []);
            }));
        routes.TakeInside(Page + "/previous", visit =>
            visit.InClass(known =>
                NewRoster.Previous(known) is { } list
                    ? Look(visit, known, Path.GetFileName(list), File.ReadAllBytes(list))
                    : visit.Nothing()
            )
        );
        routes.TakeInside(Page + "/take", visit => visit.InClass(known => Take(visit, known)));
    }

    /// <summary>A table as it was copied from somewhere; or nothing but names, a line each.</summary>
    private static Task Paste(Visit visit, ClassEntry known, string text)
    {
        var table = Encoding.UTF8.GetBytes(text + "\n");
        if (NewRoster.Of(visit.Folder, known, Pasted, table).Read.Succeeded)
            return Look(visit, known, Pasted, table);
        if (PastedCells.Of(text) is { } cells)
            return visit.Show<ColumnsPage>((nameof(ColumnsPage.Class), known), (nameof(ColumnsPage.Cells), cells));
        var names = text.Split('\n')
            .Select(line => line.Trim())
            .Where(line => line.Length > 0)
            .Select(line => $"\"{line.Replace("\"", "\"\"", StringComparison.Ordinal)}\"\n");
        return Look(visit, known, Pasted, Encoding.UTF8.GetBytes("name\n" + string.Concat(names)));
    }

    private static Task Look(Visit visit, ClassEntry known, string name, byte[] content)
    {
        var roster = NewRoster.Of(visit.Folder, known, name, content);
        if (roster.Read.Succeeded)
            visit.Desk.Kept.Begin(NameOf(known), Stamp(known), roster);
        return Show(visit, known, roster, roster.Read.Problems);
    }

    private static Task Take(Visit visit, ClassEntry known)
    {
        if (visit.IsOfOther(NameOf(known)))
            return visit.Show<Frame.WordPage>(
                (nameof(Frame.WordPage.Title), "Another list was brought meanwhile"),
                (
                    nameof(Frame.WordPage.Words),
                    "It was read in another window after this one, so that nothing was written. Bring the list that is to hold again from the class’s page."
                )
            );
        if (visit.Desk.Kept.Begun<NewRoster>(NameOf(known), Stamp(known)) is not { } roster)
            return visit.Show<Frame.WordPage>(
                (nameof(Frame.WordPage.Title), "The list was changed meanwhile"),
                (nameof(Frame.WordPage.Words), "Nothing was written over it. Bring yours again from the class’s page.")
            );
        if (Asked(visit, roster) is { Count: > 0 } asked)
            return Show(visit, known, roster, asked);
        var taken = visit.Ticked(RosterPage.OnlyTaken) ? roster.OnlyTaken(visit.Folder, known) : roster;
        var whole = taken.Settled(visit.Folder, known, visit.Typed(RosterPage.Who) == RosterPage.Same);
        if (!whole.Read.Succeeded)
            return Show(visit, known, roster, whole.Read.Problems);
        var allergies = ListedAllergies.Of(roster.Read.Model!)?.NewFor(known).Select(word => word.Word) ?? [];
        // First: a list that is taken without what was ticked beside it would look as if nobody had to keep away from anything.
        if (ListedAllergies.Add(known, [.. allergies.Intersect(visit.All(RosterPage.Allergy))]) is { Count: > 0 } problems)
            return Show(visit, known, roster, problems);
        if (whole.Write(known) is { } refused)
            return Show(visit, known, roster, [refused]);
        if (visit.Ticked("size"))
            SetSize(known, roster.Read.Model!.Students.Count);
        return visit.GoTo($"class/{known.Key}?kept=yes");
    }

    /// <summary>What has to be said of who is who before a list is taken.</summary>
    private static IReadOnlyList<Diagnostic> Asked(Visit visit, NewRoster roster) =>
        roster.Moved.Count > 0 || (roster.Renamed.Count > 0 && !roster.IsPlain)
            ? [new("", null, "Ids stand beside other people’s names", "Read below whose they are.")]
        : roster.Renamed.Count > 0 && !visit.Ticked(RosterPage.Renamed)
            ?
            [
                new(
                    "",
                    null,
                    "Known ids stand beside other names",
                    "Say below that they are the same people, or give the others ids of their own."
                ),
            ]
        : roster.UnderOtherIds.Count > 0 && visit.Typed(RosterPage.Who) is not (RosterPage.Same or RosterPage.Others)
            ? [new("", null, "The same names stand under other ids", "Choose below whether they are the same people.")]
        : [];

    /// <summary>
    /// The class's file says as many as the list has, where it would hold with that: with more teams than students it would not.
    /// </summary>
    private static void SetSize(ClassEntry known, int students)
    {
        if (OwnText.Read(known.File) is not { } profile || FrontLines.Value(profile.Text, "students") is null)
            return;
        var content = profile.With(
            FrontLines.With(profile.Text, "students", students.ToString(System.Globalization.CultureInfo.InvariantCulture))
        );
        if (ClassProfileReader.Read(new Library(new ChangedTree(PathTree.Instance.Full(known.File), content)).At(known.File)).Succeeded)
            _ = profile.Write(profile.Stamp, content);
    }

    private static Task Show(Visit visit, ClassEntry known, NewRoster roster, IReadOnlyList<Diagnostic> problems) =>
        visit.Show<RosterPage>(
            (nameof(RosterPage.Class), known),
            (nameof(RosterPage.New), roster),
            (nameof(RosterPage.Draft), visit.Desk.Kept.KeyOf(NameOf(known))),
            (
                nameof(RosterPage.Whole),
                roster.Read.Succeeded ? roster.Settled(visit.Folder, known, roster.UnderOtherIds.Count > 0) : roster
            ),
            (nameof(RosterPage.Pasted), visit.Sent("names") is null ? null : visit.Text("names")),
            (
                nameof(RosterPage.Problems),
                visit.Sent("names") is null
                    ? problems
                    : PastedLines.Of(problems, Encoding.UTF8.GetString(roster.Content.Span), visit.Text("names"))
            ),
            (nameof(RosterPage.Rounds), visit.Folder.Rounds(known).Count),
            (
                nameof(RosterPage.Erased),
                ErasedBefore.Among(
                    visit.Folder.Root,
                    visit.Desk.Now,
                    [.. (roster.Read.Model?.Students ?? []).Select(student => student.Id)]
                )
            )
        );

    private static string NameOf(ClassEntry known) => $"roster {known.File}";

    private static string Stamp(ClassEntry known) => known.Roster is { } list ? Kept.StampOf(list) : "";
}
