using ClassKit.CellFormulas.Formulas;
using ClassKit.Exercises.Keys;

namespace ClassKit.Exercises.Authoring;

/// <summary>One asked quantity.</summary>
/// <param name="Id">The name that later keys use.</param>
/// <param name="Ask">The words of the question.</param>
/// <param name="Key">The right method, a cell formula over the givens and earlier parts.</param>
/// <param name="Unit">The unit of the answer, printed beside its cell.</param>
/// <param name="Tolerance">How far an answer may be off.</param>
/// <param name="Points">What it is worth, above 0.</param>
/// <param name="FormulaAsked">True if a typed number does not earn the method's share.</param>
/// <param name="Misconceptions">The wrong turns that students are known to take.</param>
public sealed record Part(
    string Id,
    string Ask,
    CellFormula Key,
    Unit Unit,
    Tolerance Tolerance,
    decimal Points,
    bool FormulaAsked,
    IReadOnlyList<Misconception> Misconceptions
)
{
    /// <summary>The key as its author wrote it, over the exercise's steps; null if it uses none, for then it is the key.</summary>
    public CellFormula? Written { get; init; }

    /// <summary>What the answer is chosen from; null for a part that is answered in another way.</summary>
    public Choice? Choice { get; init; }

    /// <summary>What is looked for in an answer in own words; null for a part that a program can judge.</summary>
    public WordsAsked? InWords { get; init; }

    /// <summary>
    /// How exact an answer must be, the key considered: where the key rounds its result, only such a multiple is right. What is not rounded
    /// at all would round to the nearest, and so be right or wrong as the numbers fall.
    /// </summary>
    public Tolerance Exactness =>
        Tolerance.IsRounding && KeyRounding.Of(Key) is { } rounding && rounding.IsMultipleOf(Tolerance.Amount)
            ? Tolerance.Absolute(0)
            : Tolerance;

    /// <summary>True if it is answered with a number, and neither by choosing nor in words.</summary>
    public bool IsNumber => Choice is null && InWords is null;
}
