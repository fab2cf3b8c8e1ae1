using ClassKit.Desk.Folders;
using ClassKit.Wording.Counts;

namespace ClassKit.Desk.Week;

/// <summary>What an instructor does next for a class.</summary>
/// <param name="Words">In a few words.</param>
/// <param name="Page">Where it is done.</param>
public sealed record NextStep(string Words, string Page)
{
    /// <summary>
    /// What follows from how far the class's rounds are: the latest one decides, and what waits comes before what is new.
    /// </summary>
    public static NextStep Of(ClassEntry known, IReadOnlyList<RoundState> rounds)
    {
        ArgumentNullException.ThrowIfNull(known);
        ArgumentNullException.ThrowIfNull(rounds);
        if (!known.Profile.Succeeded)
            return new("Put the class’s page right", $"class/{known.Key}");
        if (known.Roster is null || (rounds.Count == 0 && known.HasBegunList))
            return new("Say who is in the class", $"class/{known.Key}#roster");
        if (rounds is not [var newest, ..])
            return new("Prepare a lesson", $"lessons/{known.Key}");
        // Of rounds that are out the one that is due first comes back first, however late another was handed out.
        var last = newest.Grades is not null
            ? newest
            : rounds
                .Where(round => round.Grades is null)
                .MinBy(round => (!round.HasFiles, round.Dealt.Due?.At ?? DateTimeOffset.MaxValue))!;
        var page = $"rounds/{known.Key}/{last.Round.Name}";
        return last switch
        {
            { Grades: null, HasFiles: true } => new("Mark what came back", page + "/returns"),
            { Grades: null } => new(
                rounds.Count > 1 ? $"Take in what comes back of {last.Dealt.LessonTitle}" : "Take in what comes back",
                page + "/returns"
            ),
            { Waiting: > 0 and var waiting } => new($"Decide on {Counted.Of(waiting, "thing")}", page + "/decisions"),
            { Out.Count: > 0 and var missing } => new($"Ask {Counted.Of(missing, "student")} for their work", page + "/returns"),
            { TeachAgain.Count: > 0, IsFollowedUp: false } => new("Teach again what was missed", page + "/again"),
            _ => new("Prepare the next lesson", $"lessons/{known.Key}"),
        };
    }
}
