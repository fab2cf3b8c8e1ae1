namespace ClassKit.Grading;

/// <summary>What a wrong number most likely is: right but for one small thing.</summary>
/// <param name="Kind">What kind.</param>
/// <param name="Note">What to tell the student.</param>
internal sealed record Slip(SlipKind Kind, string Note);
