using System.Globalization;
using System.Text.RegularExpressions;
using ClassKit.CellFormulas;
using ClassKit.Exercises;

namespace ClassKit.Grading;

/// <summary>What a student is told of an answer: facts and the next step, one or two sentences.</summary>
internal static partial class AnswerNotes
{
    public const string Sound = "Right, and your formula follows the sheet's numbers.";

    public static string Blank(CellAddress cell) => $"Nothing was entered in {cell.Cell}.";

    /// <param name="evaluation">What came of the formula.</param>
    /// <param name="typed">The words that the student typed in formulas and names, which the reason may speak of.</param>
    public static Sentence Unsupported(Evaluation evaluation, IEnumerable<string> typed) =>
        $"We could not work out this formula ({(evaluation.Reason is { } reason ? TypedWords.In(reason, typed) : "it depends on the clock or on chance")}). It costs you nothing; your instructor will look at it.";

    public static string ErrorValue(Evaluation evaluation) => evaluation.Value.Error switch
    {
        CellError.DivideByZero => "Your formula comes to #DIV/0!: it divides by zero or by an empty cell. Check which cell stands below the division.",
        CellError.Value => "Your formula comes to #VALUE!: one of its cells holds text where a number is needed. Type numbers without their unit.",
        CellError.Reference => "Your formula comes to #REF!: it points at a cell that is not there, or at itself.",
        CellError.Name => "Your formula comes to #NAME?: a name in it is not known. Check its spelling.",
        var error => $"Your formula comes to {CellErrorText.Of(error)}, which is not a number.",
    };

    /// <summary>Text or a logical where a number is asked for: what is in the way, and where.</summary>
    public static Sentence Unreadable(CellValue value, Part part)
    {
        var text = value.ToString();
        if (value.IsText && TypedFormula.Begins(text)) return BrokenFormula(text);
        if (value.IsText && IsFormulaWithoutSign(text))
            return $"“{Typed(text)}” reads like a formula, but a formula begins with =. Enter it again with = before it.";
        return $"{InTheWay(text, part.Unit)} Enter {(part.FormulaAsked ? "a formula" : "a number")} without words{(part.Unit.Length == 0 ? "" : $"; the unit {part.Unit} stands beside the cell")}.";
    }

    private static Sentence BrokenFormula(string text)
    {
        const string retry = "Enter it again in a cell that is not formatted as text; your program then says what is wrong with it.";
        if (!CellFormula.Parse(TypedFormula.Readings(text).First()).TryGet(out var formula, out var error))
            return $"This begins like a formula but cannot be read as one, from character {error.Position + 1} on: there is {TypedWords.In(error.Found, TypedWords.Of(text))}. {retry}";
        return formula.Names.Count == 0
            ? (Sentence)$"This begins like a formula, but it is no cell of this workbook. {retry}"
            : $"This begins like a formula, but “{Typed(formula.Names[0])}” in it is no cell of this workbook. {retry}";
    }

    private static Sentence InTheWay(string text, string unit)
    {
        var (kind, found, place) = UnreadableText.In(text, unit);
        var shown = found.Any(character => char.IsControl(character)) ? (Sentence)$"U+{(int)found[0]:X4}" : Sentence.Of(Typed(found));
        return kind switch
        {
            UnreadableKind.NoDigit => (Sentence)$"“{Typed(text)}” is no number: there is no digit in it.",
            UnreadableKind.Word => $"“{Typed(text)}” is no number we can read, because of the word “{shown}” at character {place}.",
            UnreadableKind.Character => $"“{Typed(text)}” is no number we can read, because of the sign “{shown}” at character {place}.",
            UnreadableKind.SecondNumber => $"“{Typed(text)}” is more than one number: “{shown}” at character {place} is a second one.",
            UnreadableKind.Marks => $"“{Typed(text)}” is no number we can read: the points and commas of “{shown}” at character {place} do not fit one.",
            UnreadableKind.TooLong => $"This is no number we can read: it has {text.Length} characters.",
        };
    }

    /// <summary><c>C7*C8</c>: with an equals sign it would be one.</summary>
    private static bool IsFormulaWithoutSign(string text) => CellByOperator().IsMatch(text) && TypedFormula.Readings("=" + text).Any(reading => CellFormula.Parse(reading).Formula is not null);

    [GeneratedRegex(@"\b[A-Z]{1,2}\$?[0-9]{1,4}\s*[*/+^×÷·-]|[*/+^(×÷·-]\s*\$?[A-Z]{1,2}\$?[0-9]{1,4}\b", RegexOptions.CultureInvariant | RegexOptions.IgnoreCase)]
    private static partial Regex CellByOperator();

    /// <summary>What is said of a formula that its cell held as text.</summary>
    public static Sentence StoodAsText(Sentence note) =>
        $"{note} The cell held the formula as text, so you saw no number; it was worked out here as though you had entered it. Set the cell's format to General before you type.";

    /// <summary>The right number, typed.</summary>
    public static string ValueOnly(Part part) => part.FormulaAsked
        ? "The number is right. A formula was asked for, one that works from the given cells, so the method's share is missing."
        : "Right.";

    /// <summary>The right number, whatever is to be said of how it stands in its cell.</summary>
    public const string RightNumber = "The number is right.";

    /// <summary>The right number by a formula that does not do what the key does when the givens change.</summary>
    /// <param name="typed">The givens that are found to be typed into it; empty if none are.</param>
    /// <param name="cell">Where a given stands.</param>
    /// <param name="dealt">The givens' values.</param>
    /// <param name="varies">False for a formula that gives the same number whatever is given.</param>
    public static string NotFollowing(IReadOnlyList<Given> typed, Func<Given, CellAddress> cell, IReadOnlyDictionary<string, decimal> dealt, bool varies)
    {
        const string begin = "The number is right for your sheet, but the formula does not follow when the given numbers change: ";
        if (typed.Count == 0) return begin + (varies ? "with others it comes to something else than the right method does." : "it comes to the same number whatever they are.");
        var found = typed.Select(given => $"{GivenText.Of(given, dealt[given.Id])}, where the sheet has {given.Label} in {cell(given).Cell}");
        return $"{begin}you typed {string.Join(", and ", found)}. Point to {(typed.Count == 1 ? "that cell" : "those cells")} instead.";
    }

    /// <summary>A formula that makes text of its number.</summary>
    public static Sentence TextOfFormula(CellValue value) =>
        $"Your formula makes text of it (“{Typed(value.ToString())}”), and other cells cannot work with text. Let the formula give the number alone; the unit stands beside the cell.";

    /// <summary>A percentage that its cell holds a hundred times too large.</summary>
    public static string Scaled(double held) => string.Create(CultureInfo.InvariantCulture,
        $"Your cell holds {held:0.####}, which other cells take for {held * 100:0.####} %: for {held:0.####} % a cell holds {held / 100:0.######}, so type the sign, {held:0.####}%.");

    /// <summary>A quantity that follows rightly from a slip, and cannot be.</summary>
    public static string CannotBe(Part part, double value) =>
        $"But {ResultText.Of(part, value)} cannot be: whenever a result is impossible, something before it is wrong.";

    public static string FollowThrough(Part part, IReadOnlyList<Part> wrong, bool methodShown) => methodShown || !part.FormulaAsked
        ? $"The method is right. It carries on the slip in {Parts(wrong)}, which was counted there and not again here."
        : $"The number follows rightly from your own {Parts(wrong)}, where the slip was counted. A formula was asked for, so the method's share is missing.";

    public static string Waiting(IReadOnlyList<Part> unusable) =>
        $"Your formula is right; it only lacks a number in {Parts(unusable)} to work from. That was counted there and not again here.";

    public const string Incorrect = "This is not the right number. Compare it with the worked solution, one step at a time.";

    private static string Parts(IReadOnlyList<Part> parts) =>
        (parts.Count == 1 ? "part " : "parts ") + string.Join(" and ", parts.Select(part => $"“{part.Ask.TrimEnd('.', '?')}”"));

    private static TypedMention Typed(string text) => new(text) { Longest = 40 };
}
