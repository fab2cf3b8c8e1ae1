using ClassKit.Grading.Findings;
using ClassKit.Grading.Results;

namespace ClassKit.Grading.Summaries;

/// <summary>
/// Wrong numbers of one student that are all the same multiple of what is right: one thing lies behind them, such as a batch too many or a
/// unit of mass.
/// </summary>
/// <param name="Factor">How many times what is right they are; above 0 and not 1.</param>
/// <param name="Answers">At least <see cref="Fewest"/> answers, in workbook order.</param>
public sealed record SharedFactor(double Factor, IReadOnlyList<AnswerGrade> Answers)
{
    /// <summary>Two alike may be chance.</summary>
    public const int Fewest = 3;

    /// <summary>Typed numbers are rounded: to about three digits they are the same multiple.</summary>
    private const double Near = 0.005;

    /// <summary>
    /// The multiple that most of a student's unexplained wrong numbers share; null if fewer than <see cref="Fewest"/> share one.
    /// </summary>
    /// <remarks>
    /// What a known wrong turn, a slip told apart or an earlier answer explains is left out: it has its words already. So are temperatures:
    /// a multiple of degrees means nothing, since their zero is arbitrary.
    /// </remarks>
    public static SharedFactor? Of(StudentGrade student)
    {
        ArgumentNullException.ThrowIfNull(student);
        var wrong = student
            .Answers.Where(answer =>
                answer is { Outcome: Outcome.Incorrect, Value.IsNumber: true, Findings: [AnswerFinding.NotRight] }
                && answer.Part.IsNumber
                && answer.Expected != 0
            )
            .Select(answer => (Answer: answer, Factor: answer.Value.Number / answer.Expected))
            .Where(one => one.Factor > 0 && !one.Answer.Part.Unit.IsTemperature)
            .ToList();
        return wrong
            .Select(one =>
                (
                    one.Factor,
                    Alike: wrong.Where(other => Math.Abs((other.Factor / one.Factor) - 1) <= Near).Select(other => other.Answer).ToList()
                )
            )
            .Where(shared => shared.Alike.Count >= Fewest)
            .OrderByDescending(shared => shared.Alike.Count)
            .Select(shared => new SharedFactor(shared.Factor, shared.Alike))
            .FirstOrDefault();
    }
}
