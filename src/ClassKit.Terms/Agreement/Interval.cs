namespace ClassKit.Terms.Agreement;

/// <summary>The ends of a 95 % interval.</summary>
/// <param name="Low">The lower end.</param>
/// <param name="High">The upper end.</param>
public readonly record struct Interval(double Low, double High)
{
    /// <summary>What lies outside at either end.</summary>
    public const double Tail = 0.025;

    /// <summary>The interval, or null where an end is no number: where there is no error at all, none can be estimated.</summary>
    internal static Interval? Of(double low, double high) => double.IsFinite(low) && double.IsFinite(high) ? new(low, high) : null;
}
