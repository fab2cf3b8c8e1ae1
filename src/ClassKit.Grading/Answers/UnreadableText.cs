using System.Globalization;
using System.Text;
using System.Text.RegularExpressions;
using ClassKit.Exercises.Authoring;
using ClassKit.Grading.Findings;

namespace ClassKit.Grading.Answers;

/// <summary>What keeps a typed text from being a number: the character or word that stands in the way, and where.</summary>
/// <param name="Kind">What is wrong.</param>
/// <param name="Found">What stands there, as it was typed; empty where something is missing.</param>
/// <param name="Place">At which character of the text it begins, from 1, as a reader counts them.</param>
internal sealed partial record UnreadableText(UnreadableKind Kind, string Found, int Place)
{
    /// <summary>Finds it.</summary>
    /// <param name="text">A text that <see cref="AnswerText"/> reads no number from.</param>
    /// <param name="unit">The unit asked for.</param>
    public static UnreadableText In(string text, Unit unit)
    {
        if (text.Length > TypedText.Longest)
            return new(UnreadableKind.TooLong, "", 1);
        var tokens = Tokens(text);
        var numbers = tokens.FindAll(token => token.IsNumber);
        if (numbers.Count == 0)
            return new(UnreadableKind.NoDigit, "", 1);
        var others = tokens.FindAll(token => !token.IsNumber);
        // The one thing without which it would be a number; else a second number, or a number that is none in itself.
        bool Separates(Token other) => numbers[0].Start < other.Start && numbers[^1].Start > other.Start;
        if (others.Find(other => !Separates(other) && AnswerText.Read(Without(text, other), unit).Count > 0) is { } one)
            return Of(one.IsWord ? UnreadableKind.Word : UnreadableKind.Character, text, one);
        if (numbers.Find(number => AnswerText.Read(Typed(text, number), unit).Count == 0) is { } broken)
            return Of(UnreadableKind.Marks, text, broken);
        if (numbers.Count > 1)
            return Of(UnreadableKind.SecondNumber, text, numbers[1]);
        var first = others.Find(other => !other.IsWord) ?? others.FirstOrDefault() ?? numbers[0];
        return Of(first.IsWord ? UnreadableKind.Word : UnreadableKind.Character, text, first);
    }

    private static UnreadableText Of(UnreadableKind kind, string text, Token token) =>
        new(kind, Typed(text, token), StringInfo.ParseCombiningCharacters(text[..token.Start]).Length + 1);

    private static string Typed(string text, Token token) => text.Substring(token.Start, token.Length);

    private static string Without(string text, Token token) =>
        text.Remove(token.Start, token.Length).Insert(token.Start, token.IsWord ? "" : " ");

    /// <summary>Numbers with their marks, words, and single other characters; blanks and what is not seen belong to none.</summary>
    private static List<Token> Tokens(string text)
    {
        // Folding keeps no places, so each character is folded by itself and stands for as many as it takes in the text.
        var folded = new StringBuilder(text.Length);
        foreach (var rune in text.EnumerateRunes())
            folded.Append(Stand(rune), rune.Utf16SequenceLength);
        return
        [
            .. Pieces()
                .Matches(folded.ToString())
                .Select(piece => new Token(piece.Index, piece.Length, piece.Value[0] == '0', piece.Value[0] == 'a')),
        ];
    }

    /// <summary>One character for what it is: <c>0</c> for a digit, <c>a</c> for a letter, blank for what is not seen.</summary>
    private static char Stand(Rune rune) =>
        TypedText.Fold(rune) switch
        {
            "" or " " => ' ',
            var folded when char.IsAsciiDigit(folded.TrimStart()[0]) => '0',
            var folded
                when Rune.IsLetter(rune)
                    || CharUnicodeInfo.GetUnicodeCategory(rune.Value)
                        is UnicodeCategory.NonSpacingMark
                            or UnicodeCategory.SpacingCombiningMark => 'a',
            "." or "," or "'" => '.',
            _ => '#',
        };

    private sealed record Token(int Start, int Length, bool IsNumber, bool IsWord);

    [GeneratedRegex(@"0(?:\.*0)*|a+|[#.]", RegexOptions.CultureInvariant)]
    private static partial Regex Pieces();
}
