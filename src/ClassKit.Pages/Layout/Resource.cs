using System.Reflection;

namespace ClassKit.Pages.Layout;

/// <summary>Files that are built into this assembly, to be set into pages.</summary>
internal static class Resource
{
    /// <summary>A file's text.</summary>
    public static string Text(string name)
    {
        using var stream = Assembly.GetExecutingAssembly().GetManifestResourceStream(name)
            ?? throw new InvalidOperationException($"{name} is not embedded in this assembly.");
        using var reader = new StreamReader(stream);
        return reader.ReadToEnd();
    }
}
