using ClassKit.Grading.Findings.Refusals;
using ClassKit.Workbooks.Returned.Packages;

namespace ClassKit.Workbooks.Returned.SpreadsheetMl;

/// <summary>The texts that cells refer to by number.</summary>
internal static class SharedStrings
{
    public static IReadOnlyList<string> Read(Package package, string? part, ReadBudget budget)
    {
        var strings = new List<string>();
        if (part is null)
            return strings;
        XmlPart.TryRead(package, part, xml =>
        {
            while (xml.Next())
            {
                if (!xml.IsAt("si"))
                    continue;
                if (strings.Count == budget.Limits.SharedTexts)
                    throw RefusalException.TooLarge(Excess.SharedTexts, budget.Limits.SharedTexts);
                strings.Add(budget.CountText(xml.ReadStringItem()));
            }
        });
        return strings;
    }
}
