using ClassKit.Content.Diagnostics;
using ClassKit.Records.Storage;

namespace ClassKit.UseCases.Recording;

/// <summary>Who of some students was erased from the record of a folder: a list of the school may bring them back.</summary>
public static class ErasedBefore
{
    /// <summary>Their ids; none where nothing is on record, or where it cannot be asked, which is said where the record is used.</summary>
    /// <param name="place">The record's file or folder.</param>
    /// <param name="now">When, for the name of a backup.</param>
    /// <param name="ids">The students' ids.</param>
    public static IReadOnlySet<string> Among(string place, DateTimeOffset now, IReadOnlyCollection<string> ids)
    {
        ArgumentNullException.ThrowIfNull(ids);
        IReadOnlySet<string> erased = new HashSet<string>();
        if (ids.Count == 0 || !File.Exists(RecordPlace.Of(place)) || RecordPlace.Open(place, now, mayBegin: false).Model is not { } opened)
            return erased;
        using var record = opened;
        RecordTroubles.Told(() =>
        {
            erased = record.Read(session => StillErased.Among(session, ids));
            return new Reading<TeachingRecord>(record, []);
        });
        return erased;
    }
}
