using System.Collections.Concurrent;
using ClassKit.CellFormulas.Formulas;
using ClassKit.CellFormulas.Sheets;

namespace ClassKit.Grading.Judging;

/// <summary>Students' formulas over the names of exercises, each once for all who wrote it. Can be used from several threads.</summary>
/// <remarks>
/// Kept are those over cells that stand where they were dealt and over nothing else, and so many that a class of thousands takes no more
/// room than a small one.
/// </remarks>
internal sealed class NamedFormulas
{
    private const int Most = 2000;

    private readonly ConcurrentDictionary<(CellAddress Cell, string Text), CellFormula?> _known = new();

    /// <summary>
    /// The formula of an answer cell that stands where it was dealt, as all others do; null where it cannot be written over names.
    /// </summary>
    /// <param name="cell">The cell.</param>
    /// <param name="text">Its formula.</param>
    /// <param name="writer">Writes it.</param>
    public CellFormula? Of(CellAddress cell, string text, Func<FormulaInNames> writer) => Find(cell, text, writer).Formula;

    /// <summary>The same of a formula that uses nothing but the cells of givens and answers; null for any other.</summary>
    public CellFormula? OfDealtCells(CellAddress cell, string text, Func<FormulaInNames> writer) =>
        Find(cell, text, writer) is { LookedAround: false, Formula: var formula } ? formula : null;

    private (CellFormula? Formula, bool LookedAround) Find(CellAddress cell, string text, Func<FormulaInNames> writer)
    {
        if (_known.TryGetValue((cell, text), out var known))
            return (known, false);
        var one = writer();
        var formula = one.Of(cell);
        if (!one.LookedAround && _known.Count < Most)
            _known.TryAdd((cell, text), formula);
        return (formula, one.LookedAround);
    }
}
