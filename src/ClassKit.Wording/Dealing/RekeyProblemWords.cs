using System.Diagnostics;
using ClassKit.Exercises.Dealing;

namespace ClassKit.Wording.Dealing;

/// <summary>Why a corrected exercise no longer fits what was dealt.</summary>
public static class RekeyProblemWords
{
    /// <summary>A sentence without its full stop.</summary>
    public static string Of(RekeyProblem problem) =>
        problem switch
        {
            RekeyProblem.OtherQuestions fact =>
                $"Exercise {fact.Exercise} asks other parts or tells other givens than it did when it was dealt, so returned answers cannot be held against it",
            RekeyProblem.NoNumber fact => $"The key of {fact.Exercise}.{fact.Part} gives no number for what {fact.Who.Shown} was dealt",
            _ => throw new UnreachableException($"No words for {problem}."),
        };
}
