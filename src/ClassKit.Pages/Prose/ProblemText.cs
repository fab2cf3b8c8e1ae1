using System.Text.RegularExpressions;
using ClassKit.Exercises;
using ClassKit.Pages.Numbers;

namespace ClassKit.Pages.Prose;

/// <summary>An exercise's text with the dealt values set in.</summary>
internal static partial class ProblemText
{
    /// <summary>The Markdown with every <c>{name}</c> of a given replaced by its value and unit; other braces stay as they are.</summary>
    public static string Fill(Exercise exercise, IReadOnlyDictionary<string, decimal> values) =>
        Placeholder().Replace(exercise.Problem, match =>
            exercise.Givens.FirstOrDefault(given => given.Id == match.Groups["name"].Value) is { } given && values.TryGetValue(given.Id, out var value)
                ? NumberText.Given(value, given.Unit)
                : match.Value);

    [GeneratedRegex(@"\{(?<name>[a-z][a-z0-9_]*)\}")]
    private static partial Regex Placeholder();
}
