using System.Reflection;

namespace ClassKit.Pages.Layout;

/// <summary>The one stylesheet, set into every page so that a page is complete by itself.</summary>
internal static class Stylesheet
{
    /// <summary>The stylesheet's text.</summary>
    public static string Text { get; } = Read();

    private static string Read()
    {
        using var stream = Assembly.GetExecutingAssembly().GetManifestResourceStream("classkit.css")
            ?? throw new InvalidOperationException("classkit.css is not embedded in this assembly.");
        using var reader = new StreamReader(stream);
        return reader.ReadToEnd();
    }
}
