namespace ClassKit.Workbooks;

/// <summary>Counts, over all sheets, what a workbook makes us keep.</summary>
internal sealed class ReadBudget(ReadLimits limits)
{
    private int _cells;
    private long _formulas;

    public ReadLimits Limits => limits;

    public void CountCell()
    {
        if (++_cells > limits.Cells) throw RefusalException.TooLarge($"it has more than {limits.Cells} filled cells");
    }

    public void CountFormula(string formula)
    {
        if (formula.Length > limits.FormulaLength) throw RefusalException.TooLarge($"a formula in it has more than {limits.FormulaLength} characters");
        _formulas += formula.Length;
        if (_formulas > limits.AllFormulasLength) throw RefusalException.TooLarge($"its formulas have more than {limits.AllFormulasLength} characters together");
    }

    public string CheckText(string text) => text.Length <= limits.TextLength
        ? text
        : throw RefusalException.TooLarge($"a text in it has more than {limits.TextLength} characters");
}
