using ClassKit.Exercises.Layout;
using ClassKit.Workbooks.Filling;

namespace ClassKit.UseCases.Rehearsing;

/// <summary>Writes rehearsed answers into a dealt workbook, the way a student would.</summary>
public static class Returning
{
    /// <summary>What has to be entered for the answers; nothing for a blank one.</summary>
    /// <param name="layout">Where the class's answers stand.</param>
    /// <param name="answers">Every part's answer.</param>
    public static IReadOnlyList<WorkbookEdit> Edits(PracticeLayout layout, IReadOnlyList<RehearsedAnswer> answers)
    {
        ArgumentNullException.ThrowIfNull(layout);
        ArgumentNullException.ThrowIfNull(answers);
        return
        [
            .. answers
                .Where(answer => answer.Content is not null)
                .Select(answer =>
                {
                    var cell = layout.Of(answer.Exercise).Answers.First(place => place.Part.Id == answer.Part).Address;
                    return (WorkbookEdit)(
                        answer.Content switch
                        {
                            double number => new EnterNumber(cell, number),
                            string formula when formula.StartsWith('=') => new EnterFormula(cell, formula),
                            string text => new EnterText(cell, text),
                            _ => throw new InvalidOperationException("An answer is a number, a formula or a text."),
                        }
                    );
                }),
        ];
    }
}
