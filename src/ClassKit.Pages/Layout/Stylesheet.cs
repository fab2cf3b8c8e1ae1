namespace ClassKit.Pages.Layout;

/// <summary>The one stylesheet, set into every page so that a page is complete by itself.</summary>
public static class Stylesheet
{
    /// <summary>The stylesheet's text.</summary>
    public static string Text { get; } = Resource.Text("classkit.css");
}
