namespace ClassKit.Grading.Findings.Refusals;

/// <summary>Why an archive that came back cannot be unpacked, or a file in one.</summary>
public enum PackingFault
{
    /// <summary>The archive is cut off or damaged.</summary>
    Broken,

    /// <summary>The archive has no files in it.</summary>
    Empty,

    /// <summary>The archive holds too many files; the rest was not looked at.</summary>
    TooManyFiles,

    /// <summary>The archive holds too many files, or files with very long names.</summary>
    TooManyNames,

    /// <summary>Too many archives are packed into one another.</summary>
    TooDeep,

    /// <summary>The file is damaged inside its archive.</summary>
    DamagedInside,

    /// <summary>The archive gives the file a size that no file has.</summary>
    ImpossibleSize,

    /// <summary>The file's size is not what the archive says.</summary>
    OtherSize,

    /// <summary>Far more comes out of the archive than belongs to practice workbooks.</summary>
    Bomb,

    /// <summary>The archive is protected with a password.</summary>
    Password,
}
