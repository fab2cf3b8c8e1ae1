using System.Globalization;
using ClassKit.Exercises.Dealing;
using ClassKit.Wording.Guarantees;

namespace ClassKit.Wording.Dealing;

/// <summary>Why an exercise cannot be dealt, and what to do.</summary>
public static class DealProblemWords
{
    /// <summary>One or two sentences.</summary>
    public static string Of(DealProblem problem)
    {
        ArgumentNullException.ThrowIfNull(problem);
        return problem.Because is { } because
            ? string.Create(
                CultureInfo.InvariantCulture,
                $"No variant of exercise {problem.Exercise.Id} was found in {problem.Attempts} draws, mostly because {BreachWords.Because(because)}. Check the exercise's file to see an example and its line."
            )
            : $"Every variant of exercise {problem.Exercise.Id} was dealt before. Widen a given's range, or leave the exercise out.";
    }
}
