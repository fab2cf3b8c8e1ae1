using ClassKit.Content.Diagnostics;
using ClassKit.Lessons.Measured;
using ClassKit.Lessons.Packs;
using ClassKit.Notes;
using ClassKit.Pages;
using ClassKit.UseCases.Intake;
using ClassKit.UseCases.Output;
using ClassKit.UseCases.Packs;
using ClassKit.UseCases.Running;

namespace ClassKit.UseCases.Observing;

/// <summary>Draws what the teams of a class measured on what was predicted.</summary>
public static class DrawObservations
{
    /// <summary>The kind of folder that its file goes into.</summary>
    public const string Kind = "observed";

    private const string Page = "what-we-measured.html";

    /// <summary>The request for a lesson, a class and what came back, or everything that is wrong with them.</summary>
    /// <param name="lesson">The lesson's folder.</param>
    /// <param name="profile">The class profile; null for a class of usual size.</param>
    /// <param name="returned">A folder or a zip.</param>
    public static Reading<ObservedRequest> Read(string lesson, string? profile, string returned)
    {
        var pack = BuildPack.Read(lesson, profile);
        var files = ReturnedFiles.At(returned);
        return pack.Succeeded && files.Succeeded ? new(new(pack.Model, files.Model), []) : new(null, [.. pack.Problems, .. files.Problems]);
    }

    /// <summary>Reads every team's measurements; what cannot be used is named and stops nothing.</summary>
    /// <exception cref="OperationCanceledException">The run was stopped.</exception>
    public static Reading<ObservedMade> Run(ObservedRequest request, Run run)
    {
        ArgumentNullException.ThrowIfNull(request);
        ArgumentNullException.ThrowIfNull(run);
        var pack = BuildPack.Run(request.Pack, run);
        if (!pack.Succeeded)
            return new(null, pack.Problems);
        return new(Of(pack.Model, request.Returned, run), []);
    }

    /// <summary>The same of a pack that is at hand.</summary>
    internal static ObservedMade Of(LessonPack pack, ReturnedFiles returned, Run run)
    {
        var form = new ObservationForm(pack);
        var teams = new Dictionary<string, (TeamMeasurements Team, string File)>(StringComparer.OrdinalIgnoreCase);
        List<string> unread = [];
        var listing = returned.List();
        var count = run.Begin(RunStep.Judging, listing.Count);
        // What an instructor typed corrects what a team brought, and is looked at first.
        foreach (var item in listing.Items.OrderBy(item => !TypedFile.Is(item.Path)))
        {
            var (team, why) = TeamFile.Read(item, form);
            unread.AddRange(why);
            if (team is not null && !teams.TryAdd(team.Team, (team, item.Path)))
                unread.Add(
                    TypedFile.Is(teams[team.Team].File)
                        ? $"{item.Path}: the measurements of {team.Team} were typed by hand, and those count."
                        : $"{item.Path}: {team.Team} has brought {teams[team.Team].File} already, and that one counts. Give the other team a name of its own."
                );
            count.Next();
        }
        return new(
            pack,
            MeasuredClass.Of(pack, [.. teams.Values.Select(team => team.Team).OrderBy(team => team.Team, NaturalOrder.Instance)]),
            unread
        );
    }

    /// <summary>The page, made when it is written.</summary>
    public static Produced Write(ObservedMade observed)
    {
        ArgumentNullException.ThrowIfNull(observed);
        return new(
            [OutputFile.OfText(Page, () => HtmlPages.ObservedClass(observed.Pack, observed.Measured, observed.Unread))],
            [
                new Note.Measured(observed.Measured.Teams.Count),
                .. observed.Unread.Count > 0 ? [new Note.NotMeasured(observed.Unread)] : (IEnumerable<Note>)[],
            ],
            []
        )
        {
            Open = [Page],
        };
    }
}
