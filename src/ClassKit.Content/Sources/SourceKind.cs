namespace ClassKit.Content.Sources;

/// <summary>What stands at a path of a source tree.</summary>
public enum SourceKind
{
    /// <summary>Nothing.</summary>
    Nothing,

    /// <summary>A file.</summary>
    File,

    /// <summary>A folder.</summary>
    Folder,
}
