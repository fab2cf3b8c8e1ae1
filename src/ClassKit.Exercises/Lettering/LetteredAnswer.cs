using ClassKit.Exercises.Authoring;
using ClassKit.Exercises.Texts;

namespace ClassKit.Exercises.Lettering;

/// <summary>An answer as a student with certain numbers reads it: where something is chosen, its letter before its words.</summary>
public static class LetteredAnswer
{
    /// <summary>The answer: <c>724.5 g</c>, or <c>B: The dough was too warm.</c></summary>
    /// <param name="exercise">The exercise.</param>
    /// <param name="part">One of its parts.</param>
    /// <param name="givens">What the student was dealt, by given id.</param>
    /// <param name="value">What the key gives, or an answer of their own.</param>
    public static string Of(Exercise exercise, Part part, IReadOnlyDictionary<string, decimal> givens, double value) =>
        Letter(exercise, part, givens, value) is { Length: > 0 } letter
            ? $"{letter}: {ResultText.Of(part, value)}"
            : ResultText.Of(part, value);

    /// <summary>As short as a table's cell: the number without its unit, or the letter alone.</summary>
    /// <inheritdoc cref="Of"/>
    public static string Brief(Exercise exercise, Part part, IReadOnlyDictionary<string, decimal> givens, double value) =>
        Letter(exercise, part, givens, value) ?? ResultText.Number(part, value);

    private static string? Letter(Exercise exercise, Part part, IReadOnlyDictionary<string, decimal> givens, double value)
    {
        ArgumentNullException.ThrowIfNull(part);
        return part.Choice is { } choice ? LetteredOptions.Of(exercise, choice.From, givens).LetterOf(value) : null;
    }
}
