namespace ClassKit.Grading.Results;

/// <summary>What became of a returned file.</summary>
public enum FileFate
{
    /// <summary>It was graded, and counts.</summary>
    Graded,

    /// <summary>It is what a student answered on paper, was graded, and counts.</summary>
    Paper,

    /// <summary>It was graded, and another file of the same student counts.</summary>
    OtherVersion,

    /// <summary>It could not be read.</summary>
    Refused,

    /// <summary>It could not be judged because of a mistake of ours; someone has to look at it by hand.</summary>
    OurError,

    /// <summary>It is a workbook, but nobody of this class was dealt it.</summary>
    NotOfThisClass,

    /// <summary>It is a workbook of another deal, and was not graded.</summary>
    OtherDeal,

    /// <summary>Programs or operating systems left it there; nobody handed it in.</summary>
    Leftover,
}
