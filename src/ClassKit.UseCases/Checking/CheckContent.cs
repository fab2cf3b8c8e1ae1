using ClassKit.Content;

namespace ClassKit.UseCases;

/// <summary>Checks authored content: every problem with its place.</summary>
public static class CheckContent
{
    /// <summary>Checks lessons, rubrics, profiles and rosters, and that every exercise of a lesson can be dealt.</summary>
    public static ContentCheck Check(IEnumerable<string> paths) => ContentChecker.Check(paths);
}
