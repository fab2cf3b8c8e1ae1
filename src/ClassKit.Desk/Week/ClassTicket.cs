using ClassKit.Desk.Folders;

namespace ClassKit.Desk.Week;

/// <summary>What hangs on the pass for one class: its latest rounds, and what is next.</summary>
/// <param name="Class">The class.</param>
/// <param name="Rounds">The latest first.</param>
/// <param name="Next">What to do next.</param>
/// <param name="Aside">Rounds that were taken away and can be put back.</param>
public sealed record ClassTicket(ClassEntry Class, IReadOnlyList<RoundState> Rounds, NextStep Next, IReadOnlyList<Round> Aside)
{
    /// <summary>So many rounds of a class hang there; older ones are in its list.</summary>
    public const int MostRounds = 3;

    /// <summary>The ticket of a class.</summary>
    public static ClassTicket Of(ClassEntry known, IReadOnlyList<RoundState> rounds, IReadOnlyList<Round> aside, DateTimeOffset now)
    {
        ArgumentNullException.ThrowIfNull(known);
        ArgumentNullException.ThrowIfNull(rounds);
        return new(known, rounds, NextStep.Of(known, rounds, now), aside);
    }
}
