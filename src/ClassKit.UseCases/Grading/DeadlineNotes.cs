using ClassKit.Notes;

namespace ClassKit.UseCases.Grading;

/// <summary>What an instructor should know of when work was due.</summary>
internal static class DeadlineNotes
{
    public static IEnumerable<Note> Of(SettledDeadline deadline)
    {
        var (moment, recorded) = (deadline.Moment, deadline.OnRecord);
        if (!deadline.IsNamed)
        {
            if (recorded is not null)
                yield return new Note.DueAsBefore(recorded, deadline.IsAsDealt);
            yield break;
        }
        if (moment is not null)
            yield return new Note.DueAsNamed(moment);
        if (recorded is not null && moment?.At.UtcDateTime != recorded.At.UtcDateTime)
            yield return new Note.DueChanged(recorded, moment, deadline.IsAsDealt);
    }
}
