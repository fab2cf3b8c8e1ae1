using ClassKit.Content.Diagnostics;
using ClassKit.Desk.Folders;
using ClassKit.Desk.Marks;
using ClassKit.Desk.Serving;

namespace ClassKit.Desk.Week;

/// <summary>
/// The pass, where a kitchen sees what goes out next and what has come back: the first page. Before there is a folder it asks for one.
/// </summary>
internal static class PassScreen
{
    public static void AddTo(DeskRoutes routes)
    {
        routes.Look("", visit => visit.Desk.Folders.Current is not { } folder ? FolderScreen.Show(visit, [])
            : Directory.Exists(folder.Root) ? Pass(visit, folder, [])
            : visit.Unreachable(null));
        routes.TakeInside("classes/new", visit => NewClass.Begin(visit, visit.Typed("name")) is { Count: > 0 } problems
                ? Pass(visit, visit.Folder, problems)
                // A heading may lose signs at its end, such as the last of “Bakers #”: then the class is found on the first page.
                : visit.GoTo(
                    visit.Folder.Classes().FirstOrDefault(known => known.Name == visit.Typed("name")) is { } begun
                        ? "class/" + begun.Key
                        : ""
                ));
        routes.Look("answers/{number}", visit =>
            visit.Desk.Answers.Find(visit.Step("number")) is { } answer ? visit.ShowAgain(answer) : visit.Nothing()
        );
        routes.Take("close", async visit =>
        {
            if (visit.Place.Work.Count > 0 && !visit.Ticked("really"))
            {
                await visit.Show<StillAtWorkPage>();
                return;
            }
            await visit.ShowLast<ClosedPage>((nameof(ClosedPage.Opened), visit.Desk.Folders.Opened));
            visit.Desk.Close();
        });
    }

    private static Task Pass(Visit visit, TeachingFolder folder, IReadOnlyList<Diagnostic> problems)
    {
        var classes = folder.Classes();
        IReadOnlyList<ClassTicket> tickets =
        [
            .. classes.Select(known =>
                ClassTicket.Of(
                    known,
                    [
                        .. folder
                            .Rounds(known)
                            .Take(ClassTicket.MostRounds)
                            .Select(visit.Look)
                            .OfType<RoundState>()
                            .Select(state => RoundAway.In(visit, known, state)),
                    ],
                    folder.RoundsAside(known),
                    visit.Desk.Now
                )
            ),
        ];
        return visit.Show<PassPage>(
            (nameof(PassPage.Tickets), tickets),
            (nameof(PassPage.Problems), problems),
            (nameof(PassPage.Name), visit.Sent("name")),
            (nameof(PassPage.Away), visit.Typed("away"))
        );
    }
}
