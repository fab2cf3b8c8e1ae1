using System.Globalization;
using ClassKit.CellFormulas.Formulas;
using ClassKit.CellFormulas.Syntax;
using ClassKit.Exercises.Authoring;
using ClassKit.Wording.Numbers;

namespace ClassKit.Wording.Answers;

/// <summary>Parts of formulas in the words of a student's own sheet: its cells, and what stands beside them.</summary>
/// <param name="exercise">The exercise on the sheet.</param>
/// <param name="cells">The cells by the names that keys use.</param>
internal sealed class SheetTerms(Exercise exercise, IReadOnlyDictionary<string, string> cells)
{
    /// <summary>An expression over names as it would stand in a cell.</summary>
    public string Cells(string expression) => CellFormula.Of("=" + expression).ReplaceNames(Cell).ToString()[1..];

    /// <summary>The same of a tree.</summary>
    public string Cells(FormulaNode node) => Cells(FormulaShape.Text(node));

    /// <summary>
    /// One cell or a longer term; a cell with what it holds, and a quantity with its unit, so that flour of 21 °C is not taken for flour by
    /// weight.
    /// </summary>
    public string Term(string expression) =>
        Label(expression) is { } label && Cell(expression) is null
            ? $"{Called(expression)}{Unit(expression, label, " ({0})")}"
            : Called(expression);

    /// <summary>The same where a quantity's unit is told beside it.</summary>
    public string Called(string expression) =>
        Label(expression) is not { } label ? Cells(expression)
        : Cell(expression) is { } cell ? $"{cell} ({label}{(IsAnswer(expression) ? "" : Unit(expression, label, ", {0}"))})"
        : IsAnswer(expression) ? $"the{label["your".Length..]}"
        : $"“{label}”";

    /// <summary>The same of a node that is one quantity or one number; null for a longer one.</summary>
    public string? TermOf(FormulaNode node) =>
        node is NumberNode || (node is NameNode name && Label(name.Name) is not null) ? Term(FormulaShape.Text(node)) : null;

    /// <summary>The same of what may be a longer term, which stands in brackets, and what its cells hold.</summary>
    public string Piece(string expression)
    {
        if (CellFormula.Of("=" + expression) is not { Shape: BinaryNode } formula)
            return Term(expression);
        if (formula.Names.Count > 0 && formula.Names.All(name => Cell(name) is null))
            return $"what comes of {Phrases.List([.. formula.Names.Select(Term)])}";
        var holds = formula
            .Names.Where(name => Cell(name) is not null && Label(name) is not null)
            .Select(name => $"{Cell(name)}: {Label(name)}{(IsAnswer(name) ? "" : Unit(name, Label(name)!, ", {0}"))}")
            .ToList();
        return $"{Quoted(formula.Shape, Cells(expression))}{(holds.Count == 0 ? "" : $" ({string.Join("; ", holds)})")}";
    }

    /// <summary>
    /// An expression within a sentence, in brackets if it is longer than a cell; a power holds together as it is, and its own brackets are
    /// enough.
    /// </summary>
    /// <param name="node">The expression.</param>
    /// <param name="text">As it is written.</param>
    public static string Quoted(FormulaNode node, string text) =>
        node is BinaryNode { Operator: not BinaryOperator.Power } ? $"({text})" : text;

    /// <summary>What a name is called on the sheet, to stand within a sentence; null for none of its names.</summary>
    public string? Label(string name) =>
        exercise.Givens.FirstOrDefault(given => IsSame(given.Id, name)) is { } given ? InSentence(given.Label)
        : exercise.Parts.Index().FirstOrDefault(part => IsSame(part.Item.Id, name)) is { Item: not null, Index: var at }
            ? $"your answer to part {Phrases.Letter(at)}"
        : null;

    /// <summary>True for what is asked or given in percent.</summary>
    public bool IsPercent(string name) => AnswerUnit.IsPercent(UnitOf(name));

    /// <summary>The unit as it stands behind a label that does not tell it; percent goes without saying.</summary>
    private string Unit(string name, string label, string behind) =>
        UnitOf(name) is var unit && (unit.Length == 0 || AnswerUnit.IsPercent(unit) || HasWord(label, unit))
            ? ""
            : string.Format(CultureInfo.InvariantCulture, behind, unit);

    private string UnitOf(string name) =>
        exercise.Givens.FirstOrDefault(given => IsSame(given.Id, name))?.Unit
        ?? exercise.Parts.FirstOrDefault(part => IsSame(part.Id, name))?.Unit
        ?? "";

    /// <summary>Gas has a g in it, and is not for that in grams.</summary>
    private static bool HasWord(string label, string word)
    {
        for (var at = label.IndexOf(word, StringComparison.Ordinal); at >= 0; at = label.IndexOf(word, at + 1, StringComparison.Ordinal))
        {
            if (!IsLetter(label, at - 1) && !IsLetter(label, at + word.Length))
                return true;
        }
        return false;
    }

    private static bool IsLetter(string text, int at) => at >= 0 && at < text.Length && char.IsLetter(text[at]);

    private bool IsAnswer(string name) => exercise.Parts.Any(part => IsSame(part.Id, name));

    private string? Cell(string name) => cells.FirstOrDefault(cell => IsSame(cell.Key, name)).Value;

    private static bool IsSame(string one, string other) => string.Equals(one, other, StringComparison.OrdinalIgnoreCase);

    /// <summary>A label begins a row; <c>pH</c> or <c>NV</c> keep their capitals.</summary>
    private static string InSentence(string label) =>
        label.Length > 1 && char.IsUpper(label[0]) && !char.IsUpper(label[1]) ? char.ToLowerInvariant(label[0]) + label[1..] : label;
}
