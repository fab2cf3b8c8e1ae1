namespace ClassKit.UseCases.Intake;

/// <summary>How far archives are opened. What a student packed is bounded; how many students there are is not.</summary>
internal static class IntakeLimits
{
    /// <summary>No practice workbook comes near this; a file beyond it is refused unread. In bytes.</summary>
    public const int FileBytes = 50 * 1024 * 1024;

    /// <summary>How many archives may lie in one another.</summary>
    public const int Depth = 4;

    /// <summary>The entries of an archive that lies in the returned folder or archive, those of archives inside it counted too.</summary>
    public const int Entries = 5_000;

    /// <summary>
    /// What comes out of such an archive beyond <see cref="Ratio"/> times what went in, in bytes; workbooks and pictures hardly pack.
    /// </summary>
    public const long UnpackedBytes = 100L * 1024 * 1024;

    /// <summary>What such an archive says of its entries, in bytes.</summary>
    public const int DirectoryBytes = 4 * 1024 * 1024;

    /// <summary>How many times larger a file may get by unpacking before it counts.</summary>
    public const int Ratio = 10;

    /// <summary>How deep folders are followed.</summary>
    public const int Folders = 32;
}
