using ClassKit.Grading.Findings.Refusals;

namespace ClassKit.Workbooks.Returned.Packages;

/// <summary>Counts, over all sheets, what a workbook makes us keep.</summary>
internal sealed class ReadBudget(ReadLimits limits)
{
    private const int Shown = 100;

    /// <summary>Ends what was cut; in a formula it stands for nothing.</summary>
    private const string TooLong = "… (too long)";

    private int _cells;
    private int _sharedFormulas;
    private long _formulas;
    private long _texts;

    public ReadLimits Limits => limits;

    public void CountCell()
    {
        if (++_cells > limits.Cells)
            throw RefusalException.TooLarge(Excess.Cells, limits.Cells);
    }

    public void CountSharedFormula()
    {
        if (++_sharedFormulas > limits.SharedFormulas)
            throw RefusalException.TooLarge(Excess.SharedFormulas, limits.SharedFormulas);
    }

    /// <summary>
    /// Counts a formula; the formula itself, or of one that no program takes its beginning, which is no formula: so much is lost of that
    /// cell, and nothing of others.
    /// </summary>
    public string CountFormula(string formula)
    {
        formula = Within(formula, limits.FormulaLength);
        _formulas += formula.Length;
        return _formulas <= limits.AllFormulasLength
            ? formula
            : throw RefusalException.TooLarge(Excess.AllFormulaCharacters, limits.AllFormulasLength);
    }

    /// <summary>Counts a text; the text itself, or of one that no program takes its beginning.</summary>
    public string CountText(string text)
    {
        text = Within(text, limits.TextLength);
        _texts += text.Length;
        return _texts <= limits.AllTextLength ? text : throw RefusalException.TooLarge(Excess.AllTextCharacters, limits.AllTextLength);
    }

    /// <summary>What is too long is cut to what a person may want to see of it.</summary>
    private static string Within(string text, int most) => text.Length <= most ? text : Beginning(text, Math.Min(Shown, most)) + TooLong;

    private static string Beginning(string text, int length) => text[..(char.IsHighSurrogate(text[length - 1]) ? length - 1 : length)];
}
