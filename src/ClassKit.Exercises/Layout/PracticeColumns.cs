namespace ClassKit.Exercises.Layout;

/// <summary>The columns of an exercise's sheet, counted from 1.</summary>
public static class PracticeColumns
{
    /// <summary>The narrow first column with the tags of givens and answers.</summary>
    public const int Tag = 1;

    /// <summary>The words of a given or a question.</summary>
    public const int Label = 2;

    /// <summary>The given's value or the student's answer.</summary>
    public const int Value = 3;

    /// <summary>The unit.</summary>
    public const int Unit = 4;

    /// <summary>What is asked of the answer: a formula, how it is rounded, what it is worth.</summary>
    public const int Note = 5;
}
