using ClassKit.CellFormulas.Formulas;
using ClassKit.CellFormulas.Sheets;
using ClassKit.Grading.Findings.Refusals;
using ClassKit.Workbooks.Returned.Packages;

namespace ClassKit.Workbooks.Returned.SpreadsheetMl;

/// <summary>Formulas that a sheet writes once, in the first cell of a group, for many cells.</summary>
/// <remarks>Source: ECMA-376 Part 1, 18.3.1.40. The first cell need not come first in the file once rows were moved.</remarks>
internal sealed class SharedFormulas(ReadBudget budget)
{
    private readonly Dictionary<string, Leader> _leaders = new(StringComparer.Ordinal);
    private readonly List<(string Group, (int Row, int Column) At)> _followers = [];

    /// <summary>A cell with the group's formula. If several have one, the first counts for those that have none.</summary>
    public void Lead(string group, (int Row, int Column) at, string text) => _leaders.TryAdd(group, new(at, text));

    /// <summary>A cell that shares the group's formula.</summary>
    public void Follow(string group, (int Row, int Column) at)
    {
        budget.CountSharedFormula();
        _followers.Add((group, at));
    }

    /// <summary>The formula of every cell that shares one, shifted to it.</summary>
    public IEnumerable<((int Row, int Column) At, string Formula)> Expand()
    {
        foreach (var (group, at) in _followers)
        {
            if (!_leaders.TryGetValue(group, out var leader))
                throw RefusalException.Damaged(new Damage.SharedFormula(new CellAddress("", at.Row, at.Column).Cell));
            yield return (at, budget.CountFormula(leader.ShiftedTo(at)));
        }
    }

    private sealed class Leader((int Row, int Column) at, string text)
    {
        private readonly CellFormula? _formula = CellFormula.Parse(text).Formula;

        /// <summary>
        /// A text that is no formula to us is none in any other cell either, and goes there as it is; so does one that would become too
        /// long there.
        /// </summary>
        public string ShiftedTo((int Row, int Column) cell)
        {
            if (_formula is null)
                return text;
            try
            {
                return _formula.Shift(cell.Row - at.Row, cell.Column - at.Column).ToFileText();
            }
            catch (FormatException)
            {
                return text + "… (too long)";
            }
        }
    }
}
