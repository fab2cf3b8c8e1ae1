using ClassKit.Exercises.Authoring;
using ClassKit.Exercises.Lettering;

namespace ClassKit.UseCases.Dealing;

/// <summary>What must hold of a part that is answered by choosing and that was read from a file.</summary>
internal static class ChoiceRules
{
    /// <summary>Longer than anybody would have students read through among others.</summary>
    private const int MostLetters = 1_000;

    /// <summary>Everything that does not hold, each a clause about the part.</summary>
    public static IEnumerable<string> Broken(Exercise exercise, Part part)
    {
        if (part.Choice is not { From: var list, Why: var why })
            yield break;
        if (list.Options.Count is < OptionList.Fewest or > OptionList.Most)
            yield return $"has {list.Options.Count} options to choose from";
        if (!Naming.IsValid(list.Id) || list.Options.Any(option => !Naming.IsValid(option.Id)))
            yield return "has options without a name";
        if (
            list.Options.Select(option => option.Id).Distinct(StringComparer.OrdinalIgnoreCase).Count() != list.Options.Count
            || list.Options.Select(option => OptionWords.Folded(option.Words)).Distinct().Count() != list.Options.Count
        )
            yield return "has two options that are one";
        if (
            list
                .Options.Select(option => option.Words)
                .Append(why)
                .Any(text => string.IsNullOrWhiteSpace(text) || text.Length > MostLetters)
        )
            yield return "has words that are missing or too long";
        if (part.FormulaAsked || !part.Unit.IsNone || part.Tolerance != Tolerance.Absolute(0))
            yield return "asks for a formula, a unit or a tolerance where a letter is asked";
        if (
            part.Choice.Drawing is { } drawing
            && drawing.States.Any(state =>
                list.NumberOf(state.Id) is null
                || !DrawnThings.States(drawing.Thing).Contains(state.Id)
                || string.IsNullOrWhiteSpace(state.Words)
                || state.Words.Length > MostLetters
            )
        )
            yield return "draws what is no option, or cannot be drawn";
        if (
            exercise
                .Parts.Select(other => other.Choice?.From)
                .OfType<OptionList>()
                .Any(other => other.Id == list.Id && !(other.Kind == list.Kind && other.Options.SequenceEqual(list.Options)))
        )
            yield return "shares a list of which there are two";
    }
}
