using ClassKit.Exercises.Authoring;
using ClassKit.Pages.Numbers;

namespace ClassKit.Pages.Terms;

/// <summary>Shares and percentages of a grade, to a hundredth of a percent: enough to follow the working by hand.</summary>
internal static class ShareText
{
    public const int Decimals = 2;

    /// <summary>A share from 0 to 1.</summary>
    public static string Of(decimal share) => OfPercent(AnswerUnit.Shown(AnswerUnit.Percent, share));

    /// <summary>A percentage.</summary>
    public static string OfPercent(decimal percent) => NumberText.WithUnit(NumberText.Exact(percent, Decimals), AnswerUnit.Percent);
}
