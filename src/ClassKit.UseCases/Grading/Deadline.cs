using ClassKit.Content;
using ClassKit.Exercises;

namespace ClassKit.UseCases;

/// <summary>When work was due: as named now, else as on record in the folder of grades; on the clocks of the class profile, else of the deal.</summary>
/// <param name="Named">What the instructor named; null for nothing.</param>
/// <param name="ClassFile">The class profile; null for what the deal knows.</param>
/// <param name="Graded">The folder of grades, which may be new; null if there is none to look at.</param>
public sealed record Deadline(DueWish? Named, string? ClassFile, string? Graded)
{
    /// <summary>Work that may come at any time.</summary>
    public static Deadline None { get; } = new(null, null, null);

    /// <summary>The moment for a class, or what is wrong with its profile.</summary>
    internal Reading<SettledDeadline> Settle(DealtClass dealt)
    {
        var profile = ClassFile is null ? null : ClassProfileReader.Read(ClassFile);
        if (profile is { Succeeded: false }) return new(null, profile.Problems);
        var notes = new List<string>();
        var recorded = OnRecord(notes);
        if (Named is null)
        {
            if (recorded is not null) notes.Add($"Due {recorded}, as on record.");
            return new(new(recorded, notes), []);
        }

        var moment = Named.In(profile?.Model?.TimeZone ?? dealt.TimeZone);
        if (moment is not null) notes.Add(Reading(moment));
        if (recorded is not null && moment?.At.UtcDateTime != recorded.At.UtcDateTime)
            notes.Add($"On record it was due {recorded}; from now on {(moment is null ? "it may come at any time" : $"it is due {moment}")}.");
        return new(new(moment, notes), []);
    }

    private static string Reading(DueMoment due) => due.Reading switch
    {
        DueReading.Plain => $"Due {due}.",
        DueReading.ZoneAssumed => $"Due {due}: nobody has said in which time zone the class is, so UTC was taken. Write `time zone: Europe/Paris` or the like into the class profile and name it with --class.",
        DueReading.Skipped => $"Due {due}: the clocks of {due.Zone} are put forward over the time that you named, so it was moved on by as much.",
        DueReading.Twice => $"Due {due}, offset {due.At:zzz}: the clocks of {due.Zone} are put back over the time that you named, so it comes twice, and the later one was taken.",
    };

    private DueMoment? OnRecord(List<string> notes)
    {
        if (Graded is null || !File.Exists(Path.Combine(Graded, GradesJson.FileName))) return null;
        var earlier = GradedFolder.Read(Graded);
        if (!earlier.Succeeded) notes.Add($"When work was due is not known from the earlier grades: {string.Join(" ", earlier.Problems)}");
        return earlier.Model?.Due;
    }
}
