using ClassKit.CellFormulas.Formulas;
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

    /// <summary>One cell or a longer term; a cell with what it holds.</summary>
    public string Term(string expression) => Label(expression) is not { } label ? Cells(expression) : Cell(expression) is { } cell ? $"{cell} ({label})" : $"“{InSolution(expression)}”";

    /// <summary>What the cells in some expressions hold, in brackets and with a space before it; nothing for none, and nothing of names that were told already.</summary>
    public string Legend(IReadOnlyList<string> told, params IEnumerable<string> expressions)
    {
        var lines = expressions.SelectMany(expression => CellFormula.Of("=" + expression).Names).Distinct(StringComparer.OrdinalIgnoreCase)
            .Where(name => Cell(name) is not null && Label(name) is not null && !told.Contains(name, StringComparer.OrdinalIgnoreCase)).Select(name => $"{Cell(name)}: {Label(name)}").ToList();
        return lines.Count == 0 ? "" : $" ({string.Join("; ", lines)})";
    }

    /// <summary>What a name is called on the sheet, to stand within a sentence; null for none of its names.</summary>
    public string? Label(string name) =>
        exercise.Givens.FirstOrDefault(given => IsSame(given.Id, name)) is { } given ? InSentence(given.Label)
        : exercise.Parts.FirstOrDefault(part => IsSame(part.Id, name)) is { } part ? $"your answer “{PartName.Of(part.Id)}”" : null;

    /// <summary>What the worked solution calls a name; null for none of its names.</summary>
    public string? InSolution(string name) => exercise.Parts.Any(part => IsSame(part.Id, name)) ? PartName.Of(name) : Label(name);

    private string? Cell(string name) => cells.FirstOrDefault(cell => IsSame(cell.Key, name)).Value;

    private static bool IsSame(string one, string other) => string.Equals(one, other, StringComparison.OrdinalIgnoreCase);

    /// <summary>A label begins a row; <c>pH</c> or <c>NV</c> keep their capitals.</summary>
    private static string InSentence(string label) => label.Length > 1 && char.IsUpper(label[0]) && !char.IsUpper(label[1]) ? char.ToLowerInvariant(label[0]) + label[1..] : label;
}
