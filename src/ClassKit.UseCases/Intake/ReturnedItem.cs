using ClassKit.Grading.Findings.Refusals;

namespace ClassKit.UseCases.Intake;

/// <summary>A file as it came back, before anyone looks at what is in it.</summary>
/// <param name="Path">Within what was returned, with forward slashes.</param>
/// <param name="Content">Its bytes; null if it was refused.</param>
/// <param name="Refusal">Why it was refused unread; null if it was not.</param>
/// <param name="Dated">When it was changed last by the folder or archive that it lies in.</param>
internal sealed record ReturnedItem(string Path, byte[]? Content, Refusal? Refusal, DateTime? Dated = null)
{
    /// <summary>What went wrong in our own program, for those who mend it; null if nothing did.</summary>
    public string? Fault { get; init; }

    /// <summary>Archives that know no date write one of this year, the first that theirs can hold.</summary>
    private const int NoDate = 1980;

    /// <summary>The same out of an archive: what lies in it came no later than it, whatever its own date says.</summary>
    /// <param name="archive">When the archive was changed last; null if that is not known.</param>
    public ReturnedItem OutOf(DateTime? archive) =>
        this with
        {
            Dated = Dated is { Year: > NoDate } own && !(archive < own) ? own : archive ?? Dated,
        };

    public static ReturnedItem Refused(string path, Refusal why) => new(path, null, why);

    public static ReturnedItem Packed(string path, PackingFault what, int most = 0) => Refused(path, new Refusal.Packed(what, most));

    public static ReturnedItem TooLarge(string path, long bytes) => Refused(path, new Refusal.Oversized(bytes));

    /// <summary>One that could not be opened or looked into.</summary>
    public static ReturnedItem Failed(string path, Exception failure) =>
        Refused(path, ItemFailure.Why(failure)) with
        {
            Fault = ItemFailure.Fault(failure),
        };
}
