namespace ClassKit.UseCases.Output.Writing;

/// <summary>What stands at a path, links not followed.</summary>
internal enum Standing
{
    Nothing,

    /// <summary>A file; also a pipe, a socket or a device, which all look like one without content.</summary>
    File,

    Folder,

    /// <summary>A link, whatever it leads to.</summary>
    Link,
}
