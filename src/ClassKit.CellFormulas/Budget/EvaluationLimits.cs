using ClassKit.CellFormulas.Calls;

namespace ClassKit.CellFormulas.Budget;

/// <summary>
/// How much work one evaluation may do. Past a limit it ends as <see cref="EvaluationStatus.Unsupported"/> with the limit named.
/// </summary>
/// <param name="Steps">Operators, functions and cells visited, all together. Looking at a value at hand, or at a few characters, is an
/// eighth of one.</param>
/// <param name="ArrayCells">Cells in any one array.</param>
/// <param name="TextLength">Characters in any one text; past it the value is <c>#VALUE!</c>, as in a cell.</param>
/// <param name="AllSteps">Steps for all the cells that are asked for together.</param>
/// <param name="LifeSteps">Steps for all that one evaluator is ever asked for.</param>
public sealed record EvaluationLimits(
    int Steps = EvaluationLimits.DefaultSteps,
    int ArrayCells = EvaluationLimits.DefaultArrayCells,
    int TextLength = EvaluationLimits.CellTextLength,
    long AllSteps = EvaluationLimits.DefaultAllSteps,
    long LifeSteps = long.MaxValue
)
{
    /// <summary>Far more than any practice workbook needs, and about a second of work.</summary>
    public const int DefaultSteps = 10_000_000;

    /// <summary>Enough for every cell of a large workbook, and a few seconds of work.</summary>
    public const long DefaultAllSteps = 30_000_000;

    /// <summary>A whole column.</summary>
    public const int DefaultArrayCells = 1_048_576;

    /// <summary>What a cell can hold: 32 767 characters.</summary>
    public const int CellTextLength = 32_767;

    /// <summary>The limits used when none are given.</summary>
    public static EvaluationLimits Default { get; } = new();
}
