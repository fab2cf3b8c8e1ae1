using ClassKit.Content.Diagnostics;
using ClassKit.Desk.Folders;
using ClassKit.Desk.Marks;
using ClassKit.Desk.Serving;
using ClassKit.UseCases.Beginning;
using ClassKit.UseCases.Output.Writing;
using ClassKit.UseCases.Running;

namespace ClassKit.Desk.Week;

/// <summary>The pass, where a kitchen sees what goes out next and what has come back: the first page. Before there is a folder it offers one.</summary>
internal static class PassScreen
{
    public static void AddTo(DeskRoutes routes)
    {
        routes.Look("", visit => visit.Desk.Folders.Current is not { } folder ? First(visit, []) : Directory.Exists(folder.Root) ? Pass(visit, folder, []) : visit.Unreachable(null));
        routes.TakeInside("classes/new", visit => NewClass.Begin(visit, visit.Typed("name")) is { Count: > 0 } problems ? Pass(visit, visit.Folder, problems) : visit.GoTo("class/" + visit.Folder.Classes().First(known => known.Name == visit.Typed("name")).Key));
        routes.Take("begin", Begin);
        routes.Take("open", visit => KnownFolder.All().FirstOrDefault(known => known.Key == visit.Typed("folder")) is { } found ? Opened(visit, new(found.Folder)) : visit.Nothing());
        routes.Take("look-round", visit => Opened(visit, LookRound.Make()));
        routes.Take("close", async visit =>
        {
            if (visit.Place.Work.Count > 0 && !visit.Ticked("really"))
            {
                await visit.Show<StillAtWorkPage>();
                return;
            }
            await visit.Show<ClosedPage>((nameof(ClosedPage.WasLookRound), visit.Desk.Folders.Current?.IsLookRound == true));
            visit.Desk.Close();
        });
    }

    private static Task Pass(Visit visit, TeachingFolder folder, IReadOnlyList<Diagnostic> problems)
    {
        var classes = folder.Classes();
        IReadOnlyList<ClassTicket> tickets = [.. classes.Select(known => ClassTicket.Of(known, [.. folder.Rounds(known).Take(ClassTicket.MostRounds).Select(visit.Look).OfType<RoundState>().Select(state => RoundAway.In(visit, known, state))], folder.RoundsAside(known)))];
        return visit.Show<PassPage>((nameof(PassPage.Tickets), tickets), (nameof(PassPage.Problems), problems), (nameof(PassPage.Name), visit.Sent("name")), (nameof(PassPage.Away), visit.Typed("away")));
    }

    private static Task Begin(Visit visit)
    {
        var place = BeginPlace.All.FirstOrDefault(known => known.Key == visit.Typed("place")) ?? BeginPlace.All[0];
        var name = visit.Typed("name");
        if (name.Length is 0 or > 80 || name is "." or ".." || name.AsSpan().IndexOfAny(Path.GetInvalidFileNameChars()) >= 0 || name.Contains('\\', StringComparison.Ordinal))
            return First(visit, [new("name", null, $"`{name}` cannot be the name of a folder", "Take letters, digits, spaces and dashes.")]);
        var folder = Path.Combine(place.Folder, name);
        var written = OutputFolder.Write(new(folder, BeginTeaching.Kind), () => BeginTeaching.Write(BeginTeaching.Run(new(BeginPart.Folder), Run.Unwatched)));
        return written.Succeeded ? Opened(visit, new(folder)) : First(visit, written.Problems);
    }

    private static Task Opened(Visit visit, TeachingFolder folder) => visit.Desk.Folders.Open(folder) is { } refused ? First(visit, [refused]) : visit.GoTo("");

    private static Task First(Visit visit, IReadOnlyList<Diagnostic> problems) => visit.Show<FirstPage>((nameof(FirstPage.Problems), problems), (nameof(FirstPage.Known), KnownFolder.All()), (nameof(FirstPage.Name), visit.Sent("name")));
}
