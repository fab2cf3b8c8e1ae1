using ClassKit.CellFormulas.Formulas;
using ClassKit.CellFormulas.Syntax;
using ClassKit.Exercises.Authoring;
using ClassKit.Exercises.Texts;

namespace ClassKit.Wording.Answers;

/// <summary>Parts of formulas in the words of a student's own sheet: its cells, and what stands beside them.</summary>
/// <param name="exercise">The exercise on the sheet.</param>
/// <param name="cells">The cells by the names that keys use.</param>
internal sealed class SheetTerms(Exercise exercise, IReadOnlyDictionary<string, string> cells)
{
    /// <summary>An expression over names as it would stand in a cell.</summary>
    public string Cells(string expression) => CellFormula.Of("=" + expression).ReplaceNames(Cell).ToString()[1..];

    /// <summary>One cell or a longer term; a cell with what it holds, so that flour of 21 °C is not taken for flour by weight.</summary>
    public string Term(string expression) => Label(expression) is not { } label ? Cells(expression) : Cell(expression) is { } cell ? $"{cell} ({label}{Unit(expression, label)})" : $"“{InSolution(expression)}”";

    /// <summary>The same of what may be a longer term, which stands in brackets, and what its cells hold.</summary>
    public string Piece(string expression)
    {
        if (CellFormula.Of("=" + expression) is not { Shape: BinaryNode } formula) return Term(expression);
        var holds = formula.Names.Where(name => Cell(name) is not null && Label(name) is not null).Select(name => $"{Cell(name)}: {Label(name)}{Unit(name, Label(name)!)}").ToList();
        return $"({Cells(expression)}){(holds.Count == 0 ? "" : $" ({string.Join("; ", holds)})")}";
    }

    /// <summary>What a name is called on the sheet, to stand within a sentence; null for none of its names.</summary>
    public string? Label(string name) =>
        exercise.Givens.FirstOrDefault(given => IsSame(given.Id, name)) is { } given ? InSentence(given.Label)
        : exercise.Parts.FirstOrDefault(part => IsSame(part.Id, name)) is { } part ? $"your answer “{PartName.Of(part.Id)}”" : null;

    /// <summary>What the worked solution calls a name; null for none of its names.</summary>
    public string? InSolution(string name) => exercise.Parts.Any(part => IsSame(part.Id, name)) ? PartName.Of(name) : Label(name);

    /// <summary>The unit behind a comma, where the label does not tell it; percent goes without saying.</summary>
    private string Unit(string name, string label)
    {
        var unit = exercise.Givens.FirstOrDefault(given => IsSame(given.Id, name))?.Unit ?? exercise.Parts.FirstOrDefault(part => IsSame(part.Id, name))?.Unit ?? "";
        return unit.Length == 0 || AnswerUnit.IsPercent(unit) || label.Contains(unit, StringComparison.Ordinal) ? "" : $", {unit}";
    }

    private string? Cell(string name) => cells.FirstOrDefault(cell => IsSame(cell.Key, name)).Value;

    private static bool IsSame(string one, string other) => string.Equals(one, other, StringComparison.OrdinalIgnoreCase);

    /// <summary>A label begins a row; <c>pH</c> or <c>NV</c> keep their capitals.</summary>
    private static string InSentence(string label) => label.Length > 1 && char.IsUpper(label[0]) && !char.IsUpper(label[1]) ? char.ToLowerInvariant(label[0]) + label[1..] : label;
}
