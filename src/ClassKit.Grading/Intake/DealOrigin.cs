namespace ClassKit.Grading.Intake;

/// <summary>Whether a returned workbook is from the deal at hand.</summary>
internal enum DealOrigin
{
    /// <summary>It is, by its codes or, where there are none, by its numbers.</summary>
    Own,

    /// <summary>It is judged as one, though something in it says otherwise.</summary>
    Doubtful,

    /// <summary>It is not.</summary>
    Other,
}
