using ClassKit.Grading.Findings;

namespace ClassKit.Grading.Judging.Slips;

/// <summary>What a wrong number most likely is: right but for one small thing.</summary>
/// <param name="Kind">What kind.</param>
/// <param name="Finding">What it is, with its numbers.</param>
internal sealed record Slip(SlipKind Kind, AnswerFinding Finding);
