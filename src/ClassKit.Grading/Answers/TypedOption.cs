using System.Text.RegularExpressions;
using ClassKit.Exercises.Authoring;
using ClassKit.Exercises.Lettering;

namespace ClassKit.Grading.Answers;

/// <summary>
/// Reads what a student entered where a letter was asked: the letter in any dress, or the option's own words. Nothing is guessed.
/// </summary>
public static partial class TypedOption
{
    /// <summary>Longer than any option with its letter.</summary>
    private const int Longest = 2_000;

    /// <summary>The option meant; null if the text names none, or more than one.</summary>
    /// <param name="options">As they stood before the student.</param>
    /// <param name="text">What the cell holds.</param>
    public static ChoiceOption? Read(LetteredOptions options, string text)
    {
        ArgumentNullException.ThrowIfNull(options);
        ArgumentNullException.ThrowIfNull(text);
        if (text.Length > Longest)
            return null;
        var folded = OptionWords.Folded(string.Concat(text.Select(Narrow)));
        if (Alone().Match(folded) is { Success: true } alone && options.At(alone.Groups["letter"].Value[0]) is { } behind)
            return behind;
        var said = options
            .InOrder.Where(option =>
                folded == OptionWords.Folded(option.Words) || folded == OptionWords.Folded($"{options.LetterOf(option)} {option.Words}")
            )
            .Take(2)
            .ToList();
        return said is [var only] ? only : null;
    }

    /// <summary>The full-width letters of East Asian keyboards (Unicode block Halfwidth and Fullwidth Forms) as plain ones.</summary>
    private static char Narrow(char character) => character is >= '\uFF01' and <= '\uFF5E' ? (char)(character - 0xFEE0) : character;

    [GeneratedRegex(@"\A(?:option |answer |letter )?(?<letter>[a-z])\z", RegexOptions.CultureInvariant)]
    private static partial Regex Alone();
}
