using ClassKit.Exercises.Dealing;
using ClassKit.Workbooks.Filling;

namespace ClassKit.UseCases.Rehearsing;

/// <summary>Writes rehearsed answers into a dealt workbook, the way a student would.</summary>
public static class Returning
{
    /// <summary>What has to be entered for the answers; nothing for a blank one.</summary>
    /// <param name="student">Whose workbook it is.</param>
    /// <param name="answers">Every part's answer.</param>
    public static IReadOnlyList<WorkbookEdit> Edits(DealtStudent student, IReadOnlyList<RehearsedAnswer> answers)
    {
        ArgumentNullException.ThrowIfNull(student);
        ArgumentNullException.ThrowIfNull(answers);
        var cells = student.Answers.ToDictionary(answer => (answer.Exercise, answer.Part), answer => answer.Address);
        return
        [
            .. answers.Where(answer => answer.Content is not null).Select(answer =>
            {
                var cell = cells[(answer.Exercise, answer.Part)];
                return (WorkbookEdit)(answer.Content switch
                {
                    double number => new EnterNumber(cell, number),
                    string formula when formula.StartsWith('=') => new EnterFormula(cell, formula),
                    string text => new EnterText(cell, text),
                    _ => throw new InvalidOperationException("An answer is a number, a formula or a text."),
                });
            }),
        ];
    }
}
