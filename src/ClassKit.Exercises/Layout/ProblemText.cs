using System.Text.RegularExpressions;

namespace ClassKit.Exercises;

/// <summary>An exercise's text with a variant's values set in.</summary>
public static partial class ProblemText
{
    /// <summary>The problem in Markdown, each <c>{given}</c> replaced by its value with its unit; other braces stay.</summary>
    public static string Fill(Exercise exercise, IReadOnlyDictionary<string, decimal> givens)
    {
        ArgumentNullException.ThrowIfNull(givens);
        return Fill(exercise, given => givens.TryGetValue(given.Id, out var value) ? GivenText.Of(given, value) : null);
    }

    /// <summary>The problem in Markdown, each <c>{given}</c> replaced by what <paramref name="shown"/> says; left as it is where that is null.</summary>
    public static string Fill(Exercise exercise, Func<Given, string?> shown)
    {
        ArgumentNullException.ThrowIfNull(exercise);
        return Placeholder().Replace(exercise.Problem, match =>
            exercise.Givens.FirstOrDefault(given => given.Id == match.Groups[1].Value) is { } given && shown(given) is { } text ? text : match.Value);
    }

    [GeneratedRegex(@"\{([a-z][a-z0-9_]*)\}")]
    private static partial Regex Placeholder();
}
