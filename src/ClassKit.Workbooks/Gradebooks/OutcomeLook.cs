using ClassKit.Wording.Outcomes;
using ClosedXML.Excel;

namespace ClassKit.Workbooks.Gradebooks;

/// <summary>
/// How cells with an outcome look: the word is what the cell holds, and its sign and tint follow when another word is typed.
/// </summary>
internal static class OutcomeLook
{
    /// <summary>Points stand on the tint of what their answer counts for; the word for it is on the sheet of outcomes.</summary>
    public static void AsOutcome(this IXLCell points, OutcomeTone tone) =>
        points.Style.Fill.BackgroundColor = XLColor.FromHtml(OutcomeTones.Ground(tone));

    public static void AsOutcomes(this IXLRange range)
    {
        foreach (var outcome in OutcomeText.Order)
        {
            var look = range.AddConditionalFormat().WhenEquals($"\"{OutcomeText.Brief(outcome)}\"");
            look.Fill.SetBackgroundColor(XLColor.FromHtml(OutcomeTones.Ground(OutcomeTones.Of(outcome))));
            look.NumberFormat.SetFormat($"\"{OutcomeSigns.Character(outcome)} \"@");
        }
    }
}
