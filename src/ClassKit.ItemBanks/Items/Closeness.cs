using ClassKit.Exercises;

namespace ClassKit.ItemBanks;

/// <summary>A tolerance as the standard writes it.</summary>
/// <param name="Mode"><c>absolute</c>, or <c>relative</c> with an amount in percent.</param>
/// <param name="Amount">The amount on either side; both bounds are inclusive.</param>
internal sealed record Closeness(string Mode, double Amount)
{
    /// <summary>Room for the last bits of a double where a part takes no other number than the right one.</summary>
    private const double Slack = 1e-9;

    /// <summary>Around a number that is known: always absolute, since the standard's relative bounds change places around a negative number.</summary>
    public static Closeness Around(Part part, double expected) => new("absolute", Math.Max(part.Tolerance.Around(expected) * AnswerScale.Of(part), Slack));

    /// <summary>Around a number that is not known yet and not negative.</summary>
    public static Closeness Of(Part part) => part.Tolerance.IsRelative
        ? new("relative", part.Tolerance.Amount * 100)
        : new("absolute", Math.Max(part.Tolerance.Amount * AnswerScale.Of(part), Slack));
}
