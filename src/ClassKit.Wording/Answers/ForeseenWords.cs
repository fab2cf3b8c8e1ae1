using ClassKit.Grading.Foresight;

namespace ClassKit.Wording.Answers;

/// <summary>What an author is told of a wrong turn that an exercise does not list.</summary>
public static class ForeseenWords
{
    /// <summary>What somebody may do.</summary>
    public static string Of(ForeseenTurn turn)
    {
        ArgumentNullException.ThrowIfNull(turn);
        return NearMissWords.OfMethod(turn.Edits, turn.Exercise, turn.Part, turn.Formula);
    }
}
