using ClassKit.Exercises.Authoring;
using ClassKit.Wording.Numbers;

namespace ClassKit.Wording.Terms;

/// <summary>Shares and percentages of a grade, to a hundredth of a percent: enough to follow the working by hand.</summary>
public static class ShareWords
{
    private const int Decimals = 2;

    /// <summary>A share from 0 to 1.</summary>
    public static string Of(decimal share) => OfPercent(Unit.Percent.Shown(share));

    /// <summary>A share from 0 to 1 to a tenth of a percent, for columns that are compared by eye.</summary>
    public static string ToATenth(decimal share) =>
        NumberText.WithUnit(NumberText.Fixed((double)Unit.Percent.Shown(share), 1), Unit.Percent.Sign);

    /// <summary>A percentage.</summary>
    public static string OfPercent(decimal percent) => NumberText.WithUnit(NumberText.Exact(percent, Decimals), Unit.Percent.Sign);
}
