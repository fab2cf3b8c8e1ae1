using ClassKit.Content.Diagnostics;

namespace ClassKit.UseCases.Checking;

/// <summary>Things of one kind that are called the same: most likely a copy whose title was left as it was.</summary>
internal static class SameTitles
{
    /// <summary>Each one whose title another has before it.</summary>
    /// <param name="what">What they are: lessons, exercises.</param>
    /// <param name="titled">Their files and titles, in order.</param>
    public static IEnumerable<Diagnostic> Among(string what, IEnumerable<(string Path, string Title)> titled) =>
        titled
            .GroupBy(one => one.Title, StringComparer.OrdinalIgnoreCase)
            .SelectMany(same =>
                same.Skip(1)
                    .Select(one => new Diagnostic(
                        one.Path,
                        null,
                        $"This {what} is called `{one.Title}`, and so is {same.First().Path}",
                        "Give the copy a title of its own: it stands on every page."
                    )
                    {
                        Weight = Weight.Doubtful,
                    })
            );
}
