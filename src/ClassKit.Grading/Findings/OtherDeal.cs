using ClassKit.Grading.Findings.Quoting;

namespace ClassKit.Grading.Findings;

/// <summary>That a workbook is from another deal than the one at hand, and what it says it is from.</summary>
/// <param name="Kind">What it is.</param>
/// <param name="Code">Its deal's code; null if it carries none.</param>
/// <param name="Lesson">The title of its lesson; null if it does not say.</param>
/// <param name="Cohort">The class it was dealt to; null if it does not say.</param>
public sealed record OtherDeal(OtherDealKind Kind, string? Code, string? Lesson, string? Cohort)
{
    internal OtherDeal Under(IDisguise disguise) =>
        this with
        {
            Lesson = Lesson is { } lesson ? disguise.OfTyped(lesson) : null,
            Cohort = Cohort is { } cohort ? disguise.OfTyped(cohort) : null,
        };
}
