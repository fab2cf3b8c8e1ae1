namespace ClassKit.Workbooks.Returned.Packages;

/// <summary>Why a returned file was not read as a workbook.</summary>
public enum RefusalKind
{
    /// <summary>It has no bytes, or none that say anything.</summary>
    Empty,

    /// <summary>It is a file of another kind, whatever its name says.</summary>
    OtherKind,

    /// <summary>It is a spreadsheet in a format other than .xlsx.</summary>
    OtherSpreadsheet,

    /// <summary>It needs a password to open.</summary>
    PasswordProtected,

    /// <summary>Its end is missing.</summary>
    Truncated,

    /// <summary>It is a workbook with something broken in it.</summary>
    Damaged,

    /// <summary>It holds more than <see cref="ReadLimits"/> allow.</summary>
    TooLarge,
}
