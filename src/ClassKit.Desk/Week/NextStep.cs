using ClassKit.Desk.Folders;
using ClassKit.Wording.Counts;

namespace ClassKit.Desk.Week;

/// <summary>What an instructor does next for a class.</summary>
/// <param name="Words">In a few words.</param>
/// <param name="Page">Where it is done.</param>
public sealed record NextStep(string Words, string Page)
{
    /// <summary>
    /// What follows from how far the class's rounds are: what came back comes before what is to come, and of several rounds the one that is
    /// due first; what is due on no day comes behind all that is. Nobody is asked for work before it is due.
    /// </summary>
    /// <param name="known">The class.</param>
    /// <param name="rounds">Its rounds, the latest first.</param>
    /// <param name="now">The moment.</param>
    public static NextStep Of(ClassEntry known, IReadOnlyList<RoundState> rounds, DateTimeOffset now)
    {
        ArgumentNullException.ThrowIfNull(known);
        ArgumentNullException.ThrowIfNull(rounds);
        if (!known.Profile.Succeeded)
            return new("Put the class’s page right", $"class/{known.Key}");
        if (known.Roster is null || (rounds.Count == 0 && known.HasBegunList))
            return new("Say who is in the class", $"class/{known.Key}#roster");
        if (rounds is not [var newest, ..])
            return new("Prepare a lesson", $"lessons/{known.Key}");
        string Page(RoundState round) => $"rounds/{known.Key}/{round.Round.Name}";
        string Which(RoundState round) => rounds.Count > 1 ? $" of {round.Dealt.LessonTitle}" : "";
        var byDue = rounds.OrderBy(DueAt).ToList();
        if (byDue.Find(round => round is { Grades: null, HasFiles: true }) is { } unmarked)
            return new("Mark what came back" + Which(unmarked), Page(unmarked) + "/returns");
        if (byDue.Find(round => round is { Grades: not null, Waiting: > 0 }) is { } waiting)
            return new($"Decide on {Counted.Of(waiting.Waiting, "thing")}{Which(waiting)}", Page(waiting) + "/decisions");
        if (byDue.Find(round => IsPast(round, now) && round.Out is { Count: > 0 }) is { Out.Count: var missing } waitedFor)
            return new($"Ask {Counted.Of(missing, "student")} for their work{Which(waitedFor)}", Page(waitedFor) + "/returns");
        if (newest.Grades is null && byDue.Find(round => round.Grades is null) is { } open)
            return new("Take in what comes back" + Which(open), Page(open) + "/returns");
        return newest is { TeachAgain.Count: > 0, IsFollowedUp: false }
            ? new("Teach again what was missed", Page(newest) + "/again")
            : new("Prepare the next lesson", $"lessons/{known.Key}");
    }

    private static DateTimeOffset DueAt(RoundState round) => round.Dealt.Due?.At ?? DateTimeOffset.MaxValue;

    /// <summary>What was dealt without a due day is waited for by nobody's calendar.</summary>
    private static bool IsPast(RoundState round, DateTimeOffset now) => round.Dealt.Due?.At <= now;
}
