namespace ClassKit.Grading.Intake;

/// <summary>What told whose workbook a returned file is, strongest first.</summary>
internal enum OwnerEvidence
{
    /// <summary>The id cell inside the workbook.</summary>
    IdCell,

    /// <summary>The givens inside the workbook, which were dealt to one student only.</summary>
    Givens,

    /// <summary>The file's name alone.</summary>
    FileName,

    /// <summary>Nothing did.</summary>
    None,
}
