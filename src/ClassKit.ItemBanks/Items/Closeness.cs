using System.Xml.Linq;
using ClassKit.Exercises.Authoring;
using ClassKit.ItemBanks.Vocabulary;

namespace ClassKit.ItemBanks.Items;

/// <summary>A tolerance as the standard writes it.</summary>
/// <param name="Mode"><c>absolute</c>, or <c>relative</c> with an amount in percent.</param>
/// <param name="Below">How far below an answer may be; both bounds are inclusive.</param>
/// <param name="Above">How far above.</param>
internal sealed record Closeness(string Mode, double Below, double Above)
{
    /// <summary>Room for the last bits of a double where a part takes no other number than the right one.</summary>
    private const double Slack = 1e-9;

    /// <summary>
    /// True where the number to be near to may be negative: the standard's relative bounds change places around such a one, so they are
    /// worked out.
    /// </summary>
    public bool IsOfAnySign { get; init; }

    /// <summary>
    /// Around a number that is known: always absolute, since the standard's relative bounds change places around a negative number.
    /// </summary>
    public static Closeness Around(Part part, double expected)
    {
        var (low, high) = part.Exactness.Range(expected);
        return new("absolute", (expected - low) * AnswerScale.Of(part), (high - expected) * AnswerScale.Of(part));
    }

    /// <summary>Around a number that is not known yet and not negative; a rounding cannot be expressed so.</summary>
    public static Closeness Of(Part part) =>
        part.Tolerance.IsRelative
            ? Same("relative", Unit.Percent.Shown(part.Tolerance.Amount))
            : Same("absolute", Math.Max(part.Tolerance.Amount * AnswerScale.Of(part), Slack));

    /// <summary>True if two numbers are as near as this; the first is the one to be near to, as in the standard's <c>equal</c>.</summary>
    public XElement Holds(XElement expected, XElement actual) =>
        IsOfAnySign && Mode == "relative"
            ? Qti.Of(
                "lte",
                Qti.Size(Qti.Of("subtract", actual, expected)),
                Qti.Of("product", Qti.Number(Unit.Percent.Held(Above)), Qti.Size(expected))
            )
            : Qti.Of(
                "equal",
                Qti.With("tolerance-mode", Mode),
                Qti.With("tolerance", $"{Qti.Text(Below)} {Qti.Text(Above)}"),
                expected,
                actual
            );

    private static Closeness Same(string mode, double amount) => new(mode, amount, amount);
}
