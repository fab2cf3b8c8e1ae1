using ClassKit.CellFormulas.Sheets;
using ClassKit.Exercises.Dealing;
using ClassKit.Exercises.Identity;
using ClassKit.Exercises.Layout;

namespace ClassKit.Grading.Intake;

/// <summary>
/// What a workbook says of the deal it is from: the code on its first sheet and on that of every exercise, and the words around it.
/// </summary>
/// <param name="Codes">Every deal's code in it; several where sheets of several workbooks were put together, none in one dealt before there
/// were codes.</param>
/// <param name="Purpose">What it was dealt for.</param>
/// <param name="Lesson">The lesson's title on its first sheet; null if that is gone.</param>
/// <param name="Cohort">The class on its first sheet; null if that is gone.</param>
internal sealed record DealMarks(IReadOnlySet<string> Codes, DealPurpose Purpose, string? Lesson, string? Cohort)
{
    /// <summary>No line of ours is longer that says a code.</summary>
    private const int MostLetters = 400;

    /// <summary>True of a workbook of ours, whatever deal it is from.</summary>
    public bool SaySomething => Codes.Count > 0 || Lesson is not null;

    /// <summary>Reads them wherever they stand.</summary>
    public static DealMarks In(WorkbookSnapshot workbook)
    {
        var codes = new SortedSet<string>(StringComparer.Ordinal);
        var purpose = DealPurpose.Graded;
        string? lesson = null,
            cohort = null;
        foreach (var sheet in workbook.Sheets)
        {
            foreach (var ((row, column), content) in sheet.Cells)
            {
                if (content is not { Formula: null, Stored: { IsText: true, Text: { Length: <= MostLetters } text } })
                    continue;
                if (text.Contains('-', StringComparison.Ordinal) && DealCode.TryFind(text, out var code))
                {
                    codes.Add(code);
                    if (DealText.PurposeIn(text.TrimEnd()) is not DealPurpose.Graded and var other)
                        purpose = other;
                }
                else if (text.TrimStart().StartsWith(StartPlan.TitlePrefix, StringComparison.Ordinal))
                {
                    lesson ??= text.TrimStart()[StartPlan.TitlePrefix.Length..].Trim();
                }
                else if (
                    text == StartPlan.ClassLabel
                    && sheet.Cells.GetValueOrDefault((row, column + 1))?.Stored is { IsText: true, Text: var name }
                )
                {
                    cohort ??= name.Trim();
                }
            }
        }

        return new(codes, purpose, lesson, cohort);
    }
}
