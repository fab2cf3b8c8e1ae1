using System.Globalization;
using ClassKit.CellFormulas.Formulas;
using ClassKit.CellFormulas.Syntax;
using ClassKit.Exercises.Authoring;
using ClassKit.Grading.Findings.Edits;
using ClassKit.Wording.Mending;
using ClassKit.Wording.Numbers;

namespace ClassKit.Wording.Answers;

/// <summary>Parts of formulas in the words of a student's own sheet: its cells, and what stands beside them.</summary>
/// <param name="exercise">The exercise on the sheet.</param>
/// <param name="cells">The cells by the names that keys use.</param>
/// <param name="isOfOthers">True where somebody else reads of those who wrote it.</param>
internal sealed class SheetTerms(Exercise exercise, IReadOnlyDictionary<string, string> cells, bool isOfOthers = false)
{
    private const int MostSummed = 40;

    /// <summary>Who did it.</summary>
    public string You { get; } = isOfOthers ? "they" : "you";

    /// <summary>The same as an object’s owner.</summary>
    public string Your { get; } = isOfOthers ? "their" : "your";

    /// <summary>A tree over cells as one over names; a cell that is none of the sheet's stays.</summary>
    public FormulaNode Named(FormulaNode node) =>
        node switch
        {
            ReferenceNode => FormulaShape.Text(node).Replace("$", "", StringComparison.Ordinal) is var cell
            && cells.FirstOrDefault(known => IsSame(known.Value, cell)).Key is { } name
                ? new NameNode(null, name, default)
                : node,
            BinaryNode binary => binary with { Left = Named(binary.Left), Right = Named(binary.Right) },
            PrefixNode prefix => prefix with { Operand = Named(prefix.Operand) },
            PercentNode percent => percent with { Operand = Named(percent.Operand) },
            GroupNode group => group with { Inner = Named(group.Inner) },
            CallNode { Name: "SUM" } sum when Summed(sum) is { } terms => terms,
            CallNode call => call with { Arguments = [.. call.Arguments.Select(Named)] },
            _ => node,
        };

    /// <summary>
    /// A sum of ranges and cells as its terms, so that each is seen that stands in it; null where one of them is nothing of the sheet.
    /// </summary>
    private FormulaNode? Summed(CallNode sum)
    {
        List<FormulaNode> terms = [];
        foreach (var argument in sum.Arguments)
        {
            if (argument is not ReferenceNode { Last: { } last, First: var first })
                terms.Add(Named(argument));
            else if (first.Row > 0 && last.Row > 0 && first.Column == last.Column && Math.Abs(last.Row - first.Row) < MostSummed)
                terms.AddRange(
                    Enumerable
                        .Range(Math.Min(first.Row, last.Row), Math.Abs(last.Row - first.Row) + 1)
                        .Select(row => Named(new ReferenceNode(null, first with { Row = row }, null, default)))
                );
            else
                return null;
        }
        return terms.Count == 0 || terms.Exists(term => term is ReferenceNode)
            ? null
            : terms.Aggregate((all, term) => new BinaryNode(BinaryOperator.Add, all, term, default));
    }

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
            ? Letter(expression) is { } letter
                ? $"“{label}” (part {letter}{UnitBehind(expression, label, ", {0}")})"
                : $"“{label}”{UnitBehind(expression, label, " ({0})")}"
            : Called(expression);

    /// <summary>The same where a quantity's unit is told beside it.</summary>
    public string Called(string expression) =>
        Label(expression) is not { } label ? Constant(expression)
        : Letter(expression) is { } letter
            ? Cell(expression) is { } own ? $"{own} ({label}, {Your} part {letter})"
                : $"“{label}” (part {letter})"
        : Cell(expression) is { } cell ? $"{cell} ({label}{UnitBehind(expression, label, ", {0}")})"
        : $"“{label}”";

    /// <summary>A number that stands beside one label of the sheet is told with it: so many grams in a cup.</summary>
    private string Constant(string expression) =>
        Cells(expression) is var text
        && decimal.TryParse(text, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var number)
        && exercise.Givens.Where(given => given.IsConstant && given.From == number).ToList() is [var only]
            ? $"{text} ({InSentence(only.Label)})"
            : text;

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
            .Select(name =>
                $"{Cell(name)}: {Label(name)}{(Letter(name) is { } letter ? $", {Your} part {letter}" : UnitBehind(name, Label(name)!, ", {0}"))}"
            )
            .ToList();
        return $"{Quoted(formula.Shape, Cells(expression))}{(holds.Count == 0 ? "" : $" ({string.Join("; ", holds)})")}";
    }

    /// <summary>The same over names.</summary>
    public string Quoted(string expression) => Quoted(CellFormula.Of("=" + expression).Shape, Cells(expression));

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
        : exercise.Parts.FirstOrDefault(part => IsSame(part.Id, name)) is { } asked ? asked.Id.Replace('_', ' ')
        : null;

    /// <summary>The letter of a part; null for a given.</summary>
    private string? Letter(string name) =>
        exercise.Parts.Index().FirstOrDefault(part => IsSame(part.Item.Id, name)) is { Item: not null, Index: var at }
            ? Phrases.Letter(at)
            : null;

    /// <summary>True if it is known in which cell a name stands.</summary>
    public bool HasCell(string name) => Cell(name) is not null;

    /// <summary>True where an amount would be called a share, of which what is left without it could be asked.</summary>
    public bool IsOfNoShare(KeyEdit edit) =>
        edit is KeyEdit.ShareForRest(var right, var written)
        && exercise.Givens.Any(given => !given.Unit.IsPercent && given.To > 1 && (IsSame(given.Id, right) || IsSame(given.Id, written)));

    /// <summary>True if everything that would be said of a change has a cell: a name of the program's is nothing to a student.</summary>
    /// <remarks>Nor is a percentage missing where a number stands that may be it, whatever it comes to.</remarks>
    public bool Tells(OwnReading reading) =>
        !(
            reading.Change is OwnChange.LeftOut { Term: Flat.Leaf { Node: NameNode term } }
            && IsPercent(term.Name)
            && HasOtherNumbers(reading.Mended)
        )
        && reading
            .Written.Leaves()
            .Concat(reading.Right.Leaves())
            .All(leaf => leaf.Node is not NameNode name || HasCell(name.Name) || Label(name.Name) is not null && IsAlone(reading));

    /// <summary>True if a formula has numbers that no key of the exercise has.</summary>
    public bool HasOtherNumbers(Flat formula) =>
        Numbers(formula).Except(exercise.Parts.Where(part => part.IsNumber).SelectMany(part => Numbers(Flat.Of(part.Key.Shape)))).Any();

    private static IEnumerable<string> Numbers(Flat formula) =>
        formula.Leaves().Where(leaf => leaf.Node is NumberNode { Value: not 1 } or PercentNode).Select(leaf => leaf.Sorted);

    /// <summary>One quantity is told by its label.</summary>
    private static bool IsAlone(OwnReading reading) => reading.Right is Flat.Leaf;

    /// <summary>True for what is asked or given in percent.</summary>
    public bool IsPercent(string name) => UnitOf(name).IsPercent;

    /// <summary>The unit as it stands behind a label that does not tell it; percent goes without saying.</summary>
    private string UnitBehind(string name, string label, string behind) =>
        UnitOf(name) is var unit && (unit.IsNone || unit.IsPercent || HasWord(label, unit.Sign))
            ? ""
            : string.Format(CultureInfo.InvariantCulture, behind, unit);

    private Unit UnitOf(string name) =>
        exercise.Givens.FirstOrDefault(given => IsSame(given.Id, name))?.Unit
        ?? exercise.Parts.FirstOrDefault(part => IsSame(part.Id, name))?.Unit
        ?? Unit.None;

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

    private string? Cell(string name) => cells.FirstOrDefault(cell => IsSame(cell.Key, name)).Value;

    private static bool IsSame(string one, string other) => string.Equals(one, other, StringComparison.OrdinalIgnoreCase);

    /// <summary>A label begins a row; <c>pH</c> or <c>NV</c> keep their capitals.</summary>
    private static string InSentence(string label) =>
        label.Length > 1 && char.IsUpper(label[0]) && !char.IsUpper(label[1]) ? char.ToLowerInvariant(label[0]) + label[1..] : label;
}
