namespace ClassKit.Terms.Agreement;

/// <summary>A coefficient of agreement: 1 is perfect, 0 what chance gives, below 0 less than that.</summary>
/// <param name="Value">The estimate.</param>
/// <param name="Interval">Its 95 % interval; null where none can be estimated.</param>
public sealed record Coefficient(double Value, Interval? Interval);
