using ClassKit.Content;

namespace ClassKit.UseCases;

/// <summary>Checks authored content: every problem with its place.</summary>
public static class CheckContent
{
    /// <summary>Checks lessons, rubrics, profiles and rosters.</summary>
    public static IReadOnlyList<Diagnostic> Check(IEnumerable<string> paths) => [.. paths.SelectMany(ContentChecker.Check)];
}
