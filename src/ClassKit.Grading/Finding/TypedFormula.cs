using System.Text;
using System.Text.RegularExpressions;
using ClassKit.Grading.Answers;

namespace ClassKit.Grading.Finding;

/// <summary>
/// Reads a formula that stands as text the way the student's own program would have read it: with the signs and digits of their keyboard,
/// with semicolons between arguments and commas in numbers, and with the function names of their language.
/// </summary>
internal static partial class TypedFormula
{
    /// <summary>
    /// True for a text that is meant as a formula: <c>=</c> stands first, but for blanks and the apostrophe that makes a cell hold text.
    /// </summary>
    public static bool Begins(string text) => Start(text).Length > 0;

    /// <summary>
    /// The ways in which the text can be read as a formula of files, each with its <c>=</c>, the likeliest first; none if it does not begin
    /// as one.
    /// </summary>
    public static IEnumerable<string> Readings(string text)
    {
        if (!Begins(text))
            return [];
        var typed = Folded(Start(text));
        var local = Localized(typed, out var isLocal);
        return (isLocal ? (string[])[local, typed] : [typed, local]).Distinct(StringComparer.Ordinal);
    }

    /// <summary>The text from its first <c>=</c> on, if nothing that is seen stands before it but apostrophes; else nothing.</summary>
    private static string Start(string text)
    {
        var first = text.AsSpan().IndexOfAny('=', '\uFF1D', '\uFE66');
        return first is >= 0 and < TypedText.Longest && TypedText.Fold(text[..first]).Trim('\'', ' ').Length == 0 ? text[first..] : "";
    }

    /// <summary>The signs of all keyboards as those of formulas, except in texts and names of sheets.</summary>
    private static string Folded(string formula)
    {
        var folded = new StringBuilder(formula.Length);
        char? quote = null;
        foreach (var rune in formula.EnumerateRunes())
        {
            var stands = TypedText.Fold(rune);
            if (stands is "\"" or "'" && (quote is null || quote == stands[0]))
            {
                quote = quote is null ? stands[0] : null;
                folded.Append(stands);
            }
            else if (quote is not null)
                folded.Append(rune);
            else if (rune.Value == TypedText.ArabicDecimal)
                folded.Append('.');
            else
                folded.Append(stands);
        }
        return Raised().Replace(folded.ToString(), power => "^" + AnswerText.Lowered(power.Value));
    }

    /// <summary>The formula as one of files, if it was typed in a program that writes decimals with a comma.</summary>
    /// <param name="typed">With the signs of formulas.</param>
    /// <param name="isLocal">True if something in it says that it was: a semicolon, a function's name, a comma in a number that separates
    /// no arguments.</param>
    private static string Localized(string typed, out bool isLocal)
    {
        var bare = Quoted().Replace(typed, quoted => new string('_', quoted.Length));
        var translates = Calls().Matches(bare).Any(call => FunctionNames.English(call.Value) is not null);
        var isSeparated = bare.Contains(';', StringComparison.Ordinal) && !bare.Contains('{', StringComparison.Ordinal);
        isLocal = translates || isSeparated;
        var result = new StringBuilder(typed.Length);
        // What encloses the place: a call or nothing but parentheses.
        var calls = new Stack<bool>();
        for (var at = 0; at < typed.Length; at++)
        {
            var character = bare[at];
            if (character == '(')
                calls.Push(at > 0 && (char.IsLetterOrDigit(bare[at - 1]) || bare[at - 1] is '.' or '_'));
            if (character == ')')
                calls.TryPop(out _);
            var inNumber =
                character == ','
                && at > 0
                && at + 1 < bare.Length
                && char.IsAsciiDigit(bare[at - 1])
                && char.IsAsciiDigit(bare[at + 1])
                && NumberBefore().IsMatch(bare[..at]);
            var isDecimal = inNumber && (translates || isSeparated || !calls.Contains(true));
            isLocal |= isDecimal;
            result.Append(
                isDecimal ? '.'
                : character == ';' && isSeparated ? ','
                : typed[at]
            );
        }
        var separated = result.ToString();
        return Calls().Replace(separated, call => bare[call.Index] == '_' ? call.Value : FunctionNames.English(call.Value) ?? call.Value);
    }

    [GeneratedRegex(@"""[^""]*""|'[^']*'", RegexOptions.CultureInvariant)]
    private static partial Regex Quoted();

    [GeneratedRegex(@"[\p{L}_][\p{L}\p{Nd}_.]*(?=\s*\()", RegexOptions.CultureInvariant)]
    private static partial Regex Calls();

    /// <summary>Digits that are a number of their own, and no row of a cell.</summary>
    [GeneratedRegex(@"(?<![\p{L}\p{Nd}_.$])[0-9]+$", RegexOptions.CultureInvariant)]
    private static partial Regex NumberBefore();

    [GeneratedRegex(@"[⁺⁻]?[⁰¹²³⁴⁵⁶⁷⁸⁹]+", RegexOptions.CultureInvariant)]
    private static partial Regex Raised();
}
