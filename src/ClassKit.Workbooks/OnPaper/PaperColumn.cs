using ClassKit.Exercises.Layout;

namespace ClassKit.Workbooks.OnPaper;

/// <summary>The columns of one part.</summary>
/// <param name="Exercise">Its exercise.</param>
/// <param name="Answer">The part.</param>
/// <param name="Column">Where its answers are typed.</param>
/// <param name="TickColumn">Where working that shows the method is ticked; null where no method is asked for.</param>
internal sealed record PaperColumn(ExerciseLayout Exercise, AnswerPlace Answer, int Column, int? TickColumn)
{
    public int LastColumn => TickColumn ?? Column;
}
