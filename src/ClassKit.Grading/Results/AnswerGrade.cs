using ClassKit.CellFormulas.Values;
using ClassKit.Exercises.Authoring;
using ClassKit.Grading.Findings;

namespace ClassKit.Grading.Results;

/// <summary>The grade of one answer.</summary>
/// <param name="Exercise">The exercise.</param>
/// <param name="Part">The part.</param>
/// <param name="Outcome">What the answer turned out to be.</param>
/// <param name="Points">What it earned.</param>
/// <param name="OutOf">What it could earn; 0 for an answer that is left to the instructor.</param>
/// <param name="Value">What the answer cell comes to on the dealt inputs.</param>
/// <param name="Expected">What the key gives.</param>
/// <param name="Formula">The student's formula with its leading <c>=</c>, or null for a typed value.</param>
/// <param name="Findings">What was found of it, what decided first; empty if nobody judged it.</param>
/// <param name="OwnEarlierAnswers">The student's own values of earlier parts that the answer was judged with, by part id; empty unless they
/// differ from the key's.</param>
public sealed record AnswerGrade(
    Exercise Exercise,
    Part Part,
    Outcome Outcome,
    decimal Points,
    decimal OutOf,
    CellValue Value,
    double Expected,
    string? Formula,
    IReadOnlyList<AnswerFinding> Findings,
    IReadOnlyDictionary<string, double> OwnEarlierAnswers
)
{
    /// <summary>The misconception met, or null.</summary>
    public Misconception? Misconception => Findings is [AnswerFinding.WrongTurn turn, ..] ? turn.Misconception : null;

    /// <summary>The wrong formula near the key that it behaves like, or null.</summary>
    public AnswerFinding.NearMiss? NearMiss => Findings is [AnswerFinding.NearMiss miss, ..] ? miss : null;

    /// <summary>True for a wrong answer of which can be said what happened: a wrong turn, a near miss or a slip.</summary>
    public bool IsExplained =>
        Outcome is Outcome.Incorrect or Outcome.Misconception && Findings is [not (AnswerFinding.NotRight or AnswerFinding.ErrorValue), ..];

    /// <summary>The option that was chosen; null where none could be told, and where a number was asked.</summary>
    public ChoiceOption? Chosen { get; init; }

    /// <summary>What was seen of the working, for an answer on paper; null for one in a workbook.</summary>
    public PaperWorking? Paper { get; init; }

    /// <summary>The instructor's correction that the points follow; null where they are the grader's.</summary>
    public AppliedCorrection? Correction { get; init; }

    /// <summary>
    /// True where somebody has said what the answer shows: the grader, or the instructor where only they can. Words that nobody has read
    /// show nothing yet, not even where they are missing.
    /// </summary>
    public bool IsJudged => !IsLeftToInstructor || Correction is not null && OutOf > 0;

    /// <summary>
    /// True where the method is understood: sound, followed through, a right number where no formula was asked; of what is left to the
    /// instructor, where all points were given. False where nothing is judged.
    /// </summary>
    public bool ShowsMethod =>
        IsLeftToInstructor
            ? IsJudged && Points >= OutOf
            : Outcome is Outcome.Sound or Outcome.FollowThrough || (Outcome == Outcome.ValueOnly && !Part.FormulaAsked);

    private bool IsLeftToInstructor => Part.InWords is not null || Outcome == Outcome.Unsupported;

    /// <summary>True while the instructor has yet to look at an answer that the grader could not judge.</summary>
    public bool IsUndecided => Outcome == Outcome.Unsupported && Correction is null;
}
