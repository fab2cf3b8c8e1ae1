using System.Globalization;
using ClassKit.Lessons.Authored;
using ClassKit.Lessons.Measured;
using ClassKit.Lessons.Observations;

namespace ClassKit.Pages.Numbers;

/// <summary>One field of an observation form, with the words that stand beside it.</summary>
/// <param name="Name">Its name in the form.</param>
/// <param name="Label">Such as <c>Popovers, Height, piece 2</c>.</param>
/// <param name="Unit">What is typed into it; <c>mm</c>.</param>
public sealed record ObservedField(string Name, string Label, string Unit)
{
    /// <summary>Every field in which a number is typed, in the form's order.</summary>
    public static IReadOnlyList<ObservedField> All(ObservationForm form)
    {
        ArgumentNullException.ThrowIfNull(form);
        return
        [
            .. from bread in form.Breads
            from measure in form.Typed(bread)
            let pieces = form.PiecesOf(bread, measure)
            from piece in Enumerable.Range(1, pieces)
            select new ObservedField(
                ObservationForm.Field(bread, measure, piece),
                LabelOf(bread, measure, pieces == 1 ? null : piece),
                ObservedUnit.For(measure, form.Units).Symbol
            ),
        ];
    }

    private static string LabelOf(LessonFormula bread, Measure measure, int? piece) =>
        $"{bread.Formula.Title}, {MeasureText.Of(measure, bread)}"
        + (piece is { } number ? string.Create(CultureInfo.InvariantCulture, $", piece {number}") : "");
}
