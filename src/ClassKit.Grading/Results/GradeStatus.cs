namespace ClassKit.Grading.Results;

/// <summary>Whether a student's work could be graded.</summary>
public enum GradeStatus
{
    /// <summary>A workbook was read and judged.</summary>
    Graded,

    /// <summary>Nothing was returned.</summary>
    Missing,

    /// <summary>Something was returned that cannot be read.</summary>
    Unreadable,
}
