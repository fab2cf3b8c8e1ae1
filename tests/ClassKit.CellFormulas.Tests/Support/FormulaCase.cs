using ClassKit.CellFormulas.Calls;
using ClassKit.CellFormulas.Evaluating;
using ClassKit.CellFormulas.Values;

namespace ClassKit.CellFormulas.Tests.Support;

/// <summary>One case: a formula, what it gives, and what LibreOffice gives where that is known to differ.</summary>
internal sealed record FormulaCase(string Formula, string Expected, string? InLibreOffice, bool NearZero)
{
    public static FormulaCase Read(string formula, string expected)
    {
        var nearZero = expected.EndsWith('~');
        if (nearZero)
            expected = expected[..^1].TrimEnd();
        var mark = expected.LastIndexOf("  ! ", StringComparison.Ordinal);
        return mark < 0
            ? new(formula, expected, null, nearZero)
            : new(formula, expected[..mark].Trim(), expected[(mark + 4)..].Trim(), nearZero);
    }

    /// <summary>Whether an evaluation came out as expected.</summary>
    public bool Holds(Evaluation evaluation) =>
        Expected switch
        {
            "unsupported" => evaluation.Status == EvaluationStatus.Unsupported,
            "volatile" => evaluation.Status == EvaluationStatus.Volatile,
            _ => evaluation.Status == EvaluationStatus.Computed && Same(Literal.Read(Expected), evaluation.Value),
        };

    private bool Same(CellValue expected, CellValue value) =>
        NearZero ? value.IsNumber && Math.Abs(value.Number - expected.Number) < 1e-9 : Literal.Same(expected, value);
}
