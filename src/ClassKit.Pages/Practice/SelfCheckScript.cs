using ClassKit.Pages.Layout;

namespace ClassKit.Pages.Practice;

/// <summary>The script of self-checking pages, the same on all of them.</summary>
internal static class SelfCheckScript
{
    public static InlineScript Script { get; } = new(Resource.Text("self-check.js"));
}
