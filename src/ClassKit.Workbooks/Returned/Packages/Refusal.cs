namespace ClassKit.Workbooks.Returned.Packages;

/// <summary>Why a returned file was not read.</summary>
/// <param name="Kind">The reason in one word.</param>
/// <param name="Reason">What was found and what to do, in sentences that can be sent to the student as they are.</param>
public sealed record Refusal(RefusalKind Kind, string Reason);
