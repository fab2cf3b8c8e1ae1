namespace ClassKit.Workbooks;

/// <summary>Counts, over all sheets, what a workbook makes us keep.</summary>
internal sealed class ReadBudget(ReadLimits limits)
{
    private int _cells;
    private int _sharedFormulas;
    private long _formulas;
    private long _texts;

    public ReadLimits Limits => limits;

    public void CountCell()
    {
        if (++_cells > limits.Cells) throw RefusalException.TooLarge($"it has more than {limits.Cells} filled cells");
    }

    public void CountSharedFormula()
    {
        if (++_sharedFormulas > limits.SharedFormulas) throw RefusalException.TooLarge($"it has more than {limits.SharedFormulas} cells that share a formula");
    }

    public void CountFormula(string formula)
    {
        if (formula.Length > limits.FormulaLength) throw RefusalException.TooLarge($"a formula in it has more than {limits.FormulaLength} characters");
        _formulas += formula.Length;
        if (_formulas > limits.AllFormulasLength) throw RefusalException.TooLarge($"its formulas have more than {limits.AllFormulasLength} characters together");
    }

    /// <summary>Counts a text; the text itself.</summary>
    public string CountText(string text)
    {
        if (text.Length > limits.TextLength) throw RefusalException.TooLarge($"a text in it has more than {limits.TextLength} characters");
        _texts += text.Length;
        return _texts <= limits.AllTextLength ? text : throw RefusalException.TooLarge($"its texts have more than {limits.AllTextLength} characters together");
    }
}
