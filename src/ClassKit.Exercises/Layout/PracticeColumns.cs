namespace ClassKit.Exercises.Layout;

/// <summary>The columns of an exercise's sheet, counted from 1.</summary>
/// <param name="Tag">The narrow first column with the tags of givens and answers.</param>
/// <param name="Label">The words of a given or a question.</param>
/// <param name="Value">The given's value or the student's answer.</param>
/// <param name="Unit">The unit.</param>
/// <param name="Note">What is asked of the answer: a formula, how it is rounded, what it is worth.</param>
public sealed record PracticeColumns(int Tag, int Label, int Value, int Unit, int Note)
{
    /// <summary>The first five, in that order.</summary>
    public static PracticeColumns Usual { get; } = new(1, 2, 3, 4, 5);

    /// <summary>
    /// The last one of a sheet. A note goes over two columns, so that beside the words all columns of the scratch area can be equally wide.
    /// </summary>
    public int Last => Note + 1;
}
