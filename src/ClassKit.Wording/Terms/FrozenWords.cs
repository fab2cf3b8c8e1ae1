using ClassKit.Exercises.Authoring;
using ClassKit.Notes;
using ClassKit.Wording.Counts;

namespace ClassKit.Wording.Terms;

/// <summary>What freezing grades changes, student by student.</summary>
public static class FrozenWords
{
    /// <summary>One line for the term, and one for each student who changes.</summary>
    public static IEnumerable<string> Of(Note.Frozen frozen)
    {
        ArgumentNullException.ThrowIfNull(frozen);
        yield return frozen switch
        {
            { Number: null } => $"{frozen.Term}: the grades given out are the grades of today.",
            { Number: 1 } =>
                $"{frozen.Term}: the grades of {Counted.Of(frozen.Students, "student")} {(frozen.IsAsked ? "would be" : "are")} frozen as they are{(frozen.Open > 0 ? $". Of these, {frozen.Open} may still change: something of theirs has no mark yet, or waits for your decision" : "")}.",
            _ =>
                $"{frozen.Term}: {Counted.Of(frozen.Differences.Count, "student")} {Counted.Noun(frozen.Differences.Count, "differs", "differ")} from what was given out, {frozen.Differences.Count(change => change.Before != change.Now)} of them in the grade. What was given out stays on record.",
        };
        foreach (var change in frozen.Differences)
            yield return "  " + Of(change);
    }

    private static string Of(FrozenChange change)
    {
        var works =
            change.Works.Count == 0
                ? ""
                : ": "
                    + string.Join(
                        ", ",
                        change.Works.Select(work =>
                            $"{work.Work} {Share(work.Before, work.WasDropped)} → {Share(work.Now, work.IsDropped)}"
                        )
                    );
        return $"{change.Student}: {change.Before ?? "no grade"} ({Rounded(change.PercentBefore)}) → {change.Now ?? "no grade"} ({Rounded(change.PercentNow)}){works}";
    }

    private static string Share(decimal? share, bool isDropped) =>
        (share is { } known ? Percent.Of(known) : "nothing") + (isDropped ? " (dropped)" : "");

    private static string Rounded(decimal? percent) => percent is { } known ? Percent.Of(Unit.Percent.Held(known)) : "nothing";
}
