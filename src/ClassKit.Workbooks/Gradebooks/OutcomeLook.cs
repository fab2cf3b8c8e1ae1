using ClassKit.Wording.Outcomes;
using ClosedXML.Excel;

namespace ClassKit.Workbooks.Gradebooks;

/// <summary>How cells with an outcome look: the word is what the cell holds, and its sign and tint follow when another word is typed.</summary>
internal static class OutcomeLook
{
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
