using ClassKit.CellFormulas.Calls;
using ClassKit.CellFormulas.Evaluating;
using ClassKit.CellFormulas.Formulas;
using ClassKit.CellFormulas.Values;

namespace ClassKit.CellFormulas.Tests.Support;

/// <summary>One assertion for "this formula gives this value".</summary>
internal static class Check
{
    private static readonly Dictionary<string, CellValue> NoNames = [];

    public static void Gives(string expected, string formula)
    {
        var evaluation = NamedEvaluation.Evaluate(CellFormula.Of(formula), NoNames);
        Assert.True(evaluation.Status == EvaluationStatus.Computed, $"{formula}: {evaluation.Status}, {evaluation.Reason}");
        Assert.True(
            Literal.Same(Literal.Read(expected), evaluation.Value),
            $"{formula} gives {Literal.Write(evaluation.Value)}, expected {expected}"
        );
    }
}
