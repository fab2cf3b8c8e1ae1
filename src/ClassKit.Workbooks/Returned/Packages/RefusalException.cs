using ClassKit.Grading.Findings.Refusals;

namespace ClassKit.Workbooks.Returned.Packages;

/// <summary>Carries a refusal out of the depths of a part to the reader, which alone catches it.</summary>
internal sealed class RefusalException(Refusal refusal) : Exception
{
    public Refusal Refusal { get; } = refusal;

    public static RefusalException Damaged(Damage what) => new(new Refusal.Damaged(what));

    public static RefusalException TooLarge(Excess what, long most, string part = "") =>
        new(new Refusal.TooLarge(what, most) { Part = part });
}
