using ClassKit.Exercises.Authoring;

namespace ClassKit.Wording.Answers;

/// <summary>What to show those of a class who have the right method and rounded.</summary>
public static class RoundedOfClassWords
{
    /// <summary>The end of a sentence: where the method itself rounds, to keep all digits would be wrong.</summary>
    /// <param name="part">The part.</param>
    public static string Show(Part part)
    {
        ArgumentNullException.ThrowIfNull(part);
        return RoundsWithinWords.Needed(part) is { } needed
            ? $"show them why the method rounds with {needed}"
            : "show them to keep all digits";
    }
}
