namespace ClassKit.Workbooks.Returned.Packages;

/// <summary>Carries a refusal out of the depths of a part to the reader, which alone catches it.</summary>
internal sealed class RefusalException(Refusal refusal) : Exception(refusal.Reason)
{
    public Refusal Refusal { get; } = refusal;

    public static RefusalException Damaged(string what) => new(Refusals.Damaged(what));

    public static RefusalException TooLarge(string what) => new(Refusals.TooLarge(what));
}
