using ClassKit.Exercises.Authoring;
using ClassKit.Exercises.Texts;

namespace ClassKit.Exercises.Layout;

/// <summary>An exercise's text with a variant's values set in.</summary>
public static class ProblemText
{
    /// <summary>The problem in Markdown, each <c>{given}</c> as its value with its unit; other braces stay.</summary>
    public static string Fill(Exercise exercise, IReadOnlyDictionary<string, decimal> givens)
    {
        ArgumentNullException.ThrowIfNull(givens);
        return Fill(exercise, given => givens.TryGetValue(given.Id, out var value) ? GivenText.Of(given, value) : null);
    }

    /// <summary>
    /// The problem in Markdown, each <c>{given}</c> as what <paramref name="shown"/> says; left as it is where that is null.
    /// </summary>
    public static string Fill(Exercise exercise, Func<Given, string?> shown)
    {
        ArgumentNullException.ThrowIfNull(exercise);
        return exercise.Problem.Fill(place =>
            exercise.Givens.FirstOrDefault(given => given.Id == place.Name) is { } given ? shown(given) : null
        );
    }
}
