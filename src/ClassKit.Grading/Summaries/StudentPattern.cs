using ClassKit.Grading.Results;

namespace ClassKit.Grading.Summaries;

/// <summary>
/// What a student's answers have in common, where that says more than their points: each asks for another talk than teaching the bakery
/// again.
/// </summary>
/// <remarks>The lines drawn here are conventions; common practice, no source.</remarks>
public sealed record StudentPattern
{
    private const int Several = 3;
    private const double Mostly = 0.75;
    private const double Many = 1 / 3.0;

    private StudentPattern(StudentGrade student) => Student = student;

    /// <summary>Who.</summary>
    public StudentGrade Student { get; }

    /// <summary>True if most right numbers stand where a formula was asked, without one.</summary>
    public bool IsMostlyTyped { get; private init; }

    /// <summary>The first of three or more blanks that reach to the end of the set; null if there is no such run.</summary>
    public AnswerGrade? StoppedAt { get; private init; }

    /// <summary>
    /// Wrong turns, known or not; empty for fewer than three, or for less than a third of what was judged: in a long set everybody has
    /// three.
    /// </summary>
    public IReadOnlyList<AnswerGrade> WrongTurns { get; private init; } = [];

    /// <summary>The share of judged answers that are wrong turns, 0 to 1.</summary>
    public double WrongShare { get; private init; }

    /// <summary>Reads one student's answers.</summary>
    public static StudentPattern Of(StudentGrade student)
    {
        ArgumentNullException.ThrowIfNull(student);
        var right = student
            .Answers.Where(answer => answer.Part.FormulaAsked && answer.Outcome is Outcome.Sound or Outcome.ValueOnly)
            .ToList();
        var typed = right.Count(answer => answer.Outcome == Outcome.ValueOnly);
        var blanks = student.Answers.Reverse().TakeWhile(answer => answer.Outcome == Outcome.Blank).ToList();
        var wrong = student
            .Answers.Where(answer => answer.Outcome is Outcome.Misconception or Outcome.Incorrect or Outcome.Unreadable)
            .ToList();
        var judged = student.Answers.Count(answer => answer.IsJudged);
        return new(student)
        {
            IsMostlyTyped = typed >= Several && typed >= Mostly * right.Count,
            StoppedAt = blanks.Count >= Several ? blanks[^1] : null,
            WrongTurns = wrong.Count >= Several && wrong.Count >= Many * judged ? wrong : [],
            WrongShare = judged == 0 ? 0 : (double)wrong.Count / judged,
        };
    }
}
