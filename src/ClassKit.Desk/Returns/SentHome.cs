using ClassKit.Content.Diagnostics;
using ClassKit.Desk.Folders;
using ClassKit.Desk.Jobs;
using ClassKit.Desk.Rounds;
using ClassKit.Wording.Counts;

namespace ClassKit.Desk.Returns;

/// <summary>
/// Workbooks that came into one round and were dealt in another of the class. What is inside says so beyond doubt, so that whoever hands
/// in at the wrong round is asked nothing: each goes to its own, which is marked anew.
/// </summary>
internal static class SentHome
{
    /// <summary>Marks what was handed in, and what of it belongs elsewhere there.</summary>
    public static JobOrder TakeIn(TeachingFolder folder, ClassEntry known, RoundState state) =>
        After(RoundGrading.Judge(state), state, () => UnclearFiles.Others(folder, known, state.Round).Select(RoundState.Of));

    /// <summary>Puts files where they belong, and marks all rounds of which something changes.</summary>
    /// <param name="state">Where they lie.</param>
    /// <param name="homes">Where they belong, by the files' names.</param>
    public static JobOrder Send(RoundState state, IReadOnlyDictionary<string, RoundState> homes)
    {
        var here = RoundGrading.Judge(state, "decisions");
        return here with { Work = run => Moved(state, homes, here, run) };
    }

    private static JobOrder After(JobOrder here, RoundState state, Func<IEnumerable<RoundState?>> others) =>
        here with
        {
            Work = run =>
            {
                var end = here.Work(run);
                if (
                    end.Problems.Count > 0
                    || RoundState.Of(state.Round) is not { } judged
                    || !judged.Unclear.Any(file => file.Other?.Code is not null)
                )
                    return end;
                List<RoundState> rounds = [.. others().OfType<RoundState>()];
                var homes = new Dictionary<string, RoundState>(StringComparer.Ordinal);
                foreach (var file in judged.Unclear)
                    if (file.Other?.Code is { } code && rounds.Find(other => other.Dealt.Identity?.Code == code) is { } home)
                        homes[file.File] = home;
                if (homes.Count == 0)
                    return end;
                // One that cannot be moved waits among the decisions, where it is said why.
                var moved = Moved(judged, homes, here, run);
                return moved.Problems.Count > 0 ? end : moved;
            },
        };

    private static JobEnd Moved(RoundState state, IReadOnlyDictionary<string, RoundState> homes, JobOrder here, UseCases.Running.Run run)
    {
        List<Diagnostic> problems = [];
        List<RoundState> to = [];
        foreach (var file in state.Unclear.Where(file => homes.ContainsKey(file.File)).ToList())
            if (UnclearFiles.Move(state, file, homes[file.File].Round.Returned) is { } refused)
                problems.Add(refused);
            else
                to.Add(homes[file.File]);
        if (to.Count == 0)
            return JobEnd.Nothing(problems);
        List<string> lines = [];
        foreach (var home in to.GroupBy(home => home.Round.Name))
        {
            var round = home.First();
            problems.AddRange(RoundGrading.Judge(round).Work(run).Problems);
            lines.Add(
                $"{Counted.Of(home.Count(), "workbook")} {Counted.Noun(home.Count(), "is", "are")} of “{round.Dealt.LessonTitle}”, round {round.Round.Number}: {Counted.Noun(home.Count(), "it lies", "they lie")} there now and {Counted.Noun(home.Count(), "is", "are")} marked with that round."
            );
        }
        var end = here.Work(run);
        return new([.. lines, .. end.Lines], [.. problems, .. end.Problems]);
    }
}
