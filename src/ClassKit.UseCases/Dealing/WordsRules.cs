using ClassKit.Exercises.Authoring;

namespace ClassKit.UseCases.Dealing;

/// <summary>What must hold of a part that is answered in own words and that was read from a file.</summary>
internal static class WordsRules
{
    /// <summary>Longer than anybody writes beside a question.</summary>
    private const int MostLetters = 10_000;

    /// <summary>Everything that does not hold, each a clause about the part.</summary>
    public static IEnumerable<string> Broken(Part part)
    {
        if (part.InWords is not { LookFor: var lookFor })
            yield break;
        if (part.Choice is not null)
            yield return "is answered in words and with a letter";
        if (string.IsNullOrWhiteSpace(lookFor) || lookFor.Length > MostLetters)
            yield return "looks for nothing, or for too much";
        if (part.FormulaAsked || !part.Unit.IsNone || part.Tolerance != Tolerance.Absolute(0) || part.Misconceptions.Count > 0)
            yield return "asks for a formula, a unit or a tolerance where words are asked";
        if (part.Key.Text != WordsAsked.NoKey.Text)
            yield return $"has the key {part.Key.Text} where nothing can be held against it";
    }
}
