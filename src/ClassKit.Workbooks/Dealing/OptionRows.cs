using ClassKit.Exercises.Layout;
using ClassKit.Exercises.Lettering;
using ClassKit.Workbooks.Look;
using ClosedXML.Excel;

namespace ClassKit.Workbooks.Dealing;

/// <summary>The options that answers are chosen from: a row each behind its letter, in the student's own order.</summary>
internal static class OptionRows
{
    private const double LeastHeight = 18;

    /// <summary>Writes the rows of a list.</summary>
    /// <param name="sheet">The sheet.</param>
    /// <param name="layout">The exercise.</param>
    /// <param name="place">The list and where it stands.</param>
    /// <param name="givens">What the student was dealt, which decides the order.</param>
    /// <param name="width">How wide the text may be, in characters.</param>
    public static void Write(
        IXLWorksheet sheet,
        ExerciseLayout layout,
        OptionPlace place,
        IReadOnlyDictionary<string, decimal> givens,
        double width
    )
    {
        foreach (var (index, text) in Texts(layout, place, givens).Index())
        {
            var row = place.FirstRow + index;
            var line = sheet.Range(row, layout.Columns.Label, row, layout.Columns.Last);
            line.Merge();
            line.FirstCell().SetText(text).Wrapped();
            line.FirstCell().Style.Alignment.Indent = 1;
            sheet.Row(row).Height = Height(text, width);
        }
    }

    /// <summary>What stands in the rows of a list, from its first row down.</summary>
    public static IReadOnlyList<string> Texts(ExerciseLayout layout, OptionPlace place, IReadOnlyDictionary<string, decimal> givens)
    {
        var options = LetteredOptions.Of(layout.Exercise, place.List, givens);
        return [.. options.InOrder.Select(option => $"{options.LetterOf(option)}   {option.Words}")];
    }

    /// <summary>How high the row of an option is, in points.</summary>
    public static double Height(string text, double width) => Math.Max(LeastHeight, TextHeight.Of(text, width));
}
