using ClassKit.Content.Diagnostics;
using ClassKit.Desk.Folders;
using ClassKit.Desk.Serving;
using ClassKit.UseCases.Beginning;
using ClassKit.UseCases.Output.Writing;
using ClassKit.UseCases.Running;

namespace ClassKit.Desk.Week;

/// <summary>
/// Which folder the desk is opened on: asked at the start, and whenever somebody goes on with another, as after a look round.
/// </summary>
internal static class FolderScreen
{
    public static void AddTo(DeskRoutes routes)
    {
        routes.Look("folders", visit => Show(visit, []));
        routes.Take("begin", Begin);
        routes.Take("begin-named", visit => Missing(visit) is { } named ? Begin(visit, named) : visit.GoTo("folders"));
        routes.TakeInside("begin-here", BeginHere);
        routes.Take("open", visit =>
            KnownFolder.Of(visit.Desk.Folders).FirstOrDefault(known => known.Key == visit.Typed("folder")) is { } found
                ? Open(visit, new(found.Folder))
                : visit.Nothing()
        );
        routes.Take("look-round", visit =>
            visit.Desk.Folders.Current is { IsLookRound: true } ? visit.GoTo("") : Open(visit, Before(visit) ?? LookRound.Make())
        );
    }

    /// <summary>Asks for a folder.</summary>
    /// <param name="visit">Who asks.</param>
    /// <param name="problems">Why it is asked again.</param>
    public static Task Show(Visit visit, IReadOnlyList<Diagnostic> problems) =>
        visit.Show<FirstPage>(
            (nameof(FirstPage.Problems), problems),
            (nameof(FirstPage.Known), KnownFolder.Of(visit.Desk.Folders)),
            (nameof(FirstPage.Name), visit.Sent("name")),
            (nameof(FirstPage.Where), visit.Sent("place")),
            (nameof(FirstPage.HasLooked), Before(visit) is not null),
            (nameof(FirstPage.Missing), Missing(visit))
        );

    /// <summary>What was tried on a look round stays as long as the desk is open.</summary>
    private static TeachingFolder? Before(Visit visit) =>
        visit.Desk.Folders.Opened.FirstOrDefault(folder => folder.IsLookRound && Directory.Exists(folder.Root));

    private static Task Begin(Visit visit)
    {
        var place = BeginPlace.All.FirstOrDefault(known => known.Key == visit.Typed("place")) ?? BeginPlace.All[0];
        var name = visit.Typed("name");
        if (
            name.Length is 0 or > 80
            || name is "." or ".."
            || name.AsSpan().IndexOfAny(Path.GetInvalidFileNameChars()) >= 0
            || name.Contains('\\', StringComparison.Ordinal)
        )
            return Show(visit, [new("name", null, $"`{name}` cannot be the name of a folder", "Take letters, digits, spaces and dashes.")]);
        return Begin(visit, Path.Combine(place.Folder, name));
    }

    /// <summary>The folder that whoever opened the desk named, as long as it is not there.</summary>
    private static string? Missing(Visit visit) => visit.Desk.Folders.Missing is { } named && !Path.Exists(named) ? named : null;

    private static Task Begin(Visit visit, string folder)
    {
        if (AtWork(visit) is { } busy)
            return Show(visit, [busy]);
        var written = OutputFolder.Write(new(folder, BeginTeaching.Kind), () =>
            BeginTeaching.Write(BeginTeaching.Run(new(BeginPart.Folder), Run.Unwatched))
        );
        return written.Succeeded ? Open(visit, new(folder)) : Show(visit, written.Problems);
    }

    /// <summary>
    /// The same files in the folder that the desk is open on already, as somebody made an empty one for it: nothing that lies there is
    /// touched.
    /// </summary>
    private static Task BeginHere(Visit visit)
    {
        foreach (var file in BeginTeaching.Run(new(BeginPart.Folder), Run.Unwatched))
        {
            var to = Path.Combine(visit.Folder.Root, file.Path);
            if (Path.Exists(to))
                continue;
            Directory.CreateDirectory(Path.GetDirectoryName(to)!);
            WholeFile.Write(to, file.Content);
        }
        return visit.GoTo("");
    }

    private static Task Open(Visit visit, TeachingFolder folder) =>
        (AtWork(visit) ?? visit.Desk.Folders.Open(folder)) is { } refused ? Show(visit, [refused]) : visit.GoTo("");

    /// <summary>Work of one folder is not left alone while the desk holds another.</summary>
    private static Diagnostic? AtWork(Visit visit) =>
        visit.Place.Work is [var work, ..]
            ? new(
                "folder",
                null,
                $"Something is still being done: {work.Order.Title}",
                "Wait until it is done, or stop it; then choose the folder again."
            )
            : null;
}
