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

    /// <summary>
    /// Letters of the Greek and Cyrillic alphabets that look like A to H (Unicode Technical Standard 39, confusables), and those. Whoever
    /// writes in one of these alphabets has them under the same keys.
    /// </summary>
    private static readonly Dictionary<char, char> Lookalikes = new()
    {
        ['А'] = 'A',
        ['а'] = 'a',
        ['В'] = 'B',
        ['С'] = 'C',
        ['с'] = 'c',
        ['Е'] = 'E',
        ['е'] = 'e',
        ['Н'] = 'H',
        ['Α'] = 'A',
        ['Β'] = 'B',
        ['Ε'] = 'E',
        ['Η'] = 'H',
    };

    /// <summary>The option meant; null if the text names none, or more than one.</summary>
    /// <param name="options">As they stood before the student.</param>
    /// <param name="text">What the cell holds.</param>
    /// <param name="anyAlphabet">Whether letters of other alphabets count that look like those asked for.</param>
    public static ChoiceOption? Read(LetteredOptions options, string text, bool anyAlphabet = true)
    {
        ArgumentNullException.ThrowIfNull(options);
        ArgumentNullException.ThrowIfNull(text);
        if (text.Length > Longest)
            return null;
        var folded = OptionWords.Folded(string.Concat(text.Select(Narrow)));
        if (anyAlphabet && folded.Length == 1 && Latin(text) is var latin && latin != text)
            folded = OptionWords.Folded(latin);
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

    /// <summary>
    /// True if one letter of the options, and no other, stands by itself among other words, as in <c>C because it is warm</c>. Whether it
    /// is meant, or ruled out, only a reader can tell.
    /// </summary>
    /// <param name="options">As they stood before the student.</param>
    /// <param name="text">What the cell holds.</param>
    public static bool NamesOne(LetteredOptions options, string text)
    {
        ArgumentNullException.ThrowIfNull(options);
        ArgumentNullException.ThrowIfNull(text);
        return text.Length <= Longest
            && Standing()
                .Matches(Latin(string.Concat(text.Select(Narrow))))
                .Select(letter => char.ToLowerInvariant(letter.ValueSpan[0]))
                .Where(letter => options.At(letter) is not null)
                .Distinct()
                .Take(2)
                .Count() == 1;
    }

    private static string Latin(string text) => string.Concat(text.Select(letter => Lookalikes.GetValueOrDefault(letter, letter)));

    /// <summary>The full-width letters of East Asian keyboards (Unicode block Halfwidth and Fullwidth Forms) as plain ones.</summary>
    private static char Narrow(char character) => character is >= '\uFF01' and <= '\uFF5E' ? (char)(character - 0xFEE0) : character;

    [GeneratedRegex(@"\A(?:option |answer |letter )?(?<letter>[a-z])\z", RegexOptions.CultureInvariant)]
    private static partial Regex Alone();

    /// <summary>A letter by itself, or the same one again and again; a small a between words is one.</summary>
    [GeneratedRegex(@"(?<![\p{L}\p{N}'’])(?<letter>[A-Z]|[b-z])\k<letter>*(?![\p{L}\p{N}'’])", RegexOptions.CultureInvariant)]
    private static partial Regex Standing();
}
