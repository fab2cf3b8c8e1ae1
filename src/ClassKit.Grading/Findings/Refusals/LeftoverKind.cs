namespace ClassKit.Grading.Findings.Refusals;

/// <summary>What leaves files beside workbooks that nobody handed in.</summary>
public enum LeftoverKind
{
    /// <summary>A program that had the workbook open.</summary>
    LockFile,

    /// <summary>A Mac, beside every file that it packs.</summary>
    MacFile,

    /// <summary>An operating system or a backup.</summary>
    SystemFile,
}
