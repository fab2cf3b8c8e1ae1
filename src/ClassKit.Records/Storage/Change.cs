namespace ClassKit.Records.Storage;

/// <summary>What goes into the record as the reason of everything that one transaction writes.</summary>
/// <param name="At">When.</param>
/// <param name="Who">Who.</param>
/// <param name="What">The kind of change, such as <c>enter</c>.</param>
/// <param name="About">What it is about; names no student.</param>
/// <param name="Why">Why; may be empty.</param>
public sealed record Change(DateTimeOffset At, string Who, string What, string About, string Why);
