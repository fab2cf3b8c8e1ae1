namespace ClassKit.Grading.Statistics;

/// <summary>Why a reliability is undefined.</summary>
public enum NoReliability
{
    /// <summary>Fewer than two students were graded whole.</summary>
    TooFewStudents,

    /// <summary>There is only one part: a reliability compares parts with one another.</summary>
    OnePart,

    /// <summary>Every student has the same total.</summary>
    NobodyDiffers,

    /// <summary>Students were asked different parts.</summary>
    DifferentSets,
}
