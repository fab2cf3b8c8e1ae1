using ClassKit.CellFormulas.Sheets;
using ClassKit.Grading.Findings;
using ClassKit.Grading.Judging.Slips;
using ClassKit.Grading.Judging.Trials;
using ClassKit.Grading.Results;

namespace ClassKit.Grading.Judging;

/// <summary>What the judge found of one answer, before points.</summary>
/// <param name="Outcome">The outcome.</param>
/// <param name="Reading">The reading that led to it; null if the answer is no number.</param>
/// <param name="MethodShown">True if a formula shows the method, not only a typed number.</param>
/// <param name="Finding">What decided.</param>
internal sealed record Judgement(Outcome Outcome, Reading? Reading, bool MethodShown, AnswerFinding Finding)
{
    /// <summary>What else was found.</summary>
    public IReadOnlyList<AnswerFinding> Beside { get; init; } = [];

    /// <summary>All of it, what decided first.</summary>
    public IReadOnlyList<AnswerFinding> Findings => [Finding, .. Beside];

    /// <summary>The one small thing that makes an incorrect answer wrong, where it is known.</summary>
    public SlipKind? Slip { get; init; }

    /// <summary>True if the instructor saw working on paper that shows the method, whatever came of it.</summary>
    public bool WorkingSeen { get; init; }

    /// <summary>A blank cell.</summary>
    public static Judgement OfNothing(CellAddress cell) => new(Outcome.Blank, null, false, new AnswerFinding.Empty(cell.Cell));

    /// <summary>What we cannot judge, for the instructor to look at.</summary>
    public static Judgement Unsupported(AnswerFinding why) => new(Outcome.Unsupported, null, false, why);

    /// <summary>The one small thing that an answer has otherwise than it should.</summary>
    public static Judgement OfSlip(Reading? reading, Slip slip, bool isFormula) =>
        new(Outcome.Incorrect, reading, isFormula, slip.Finding) { Slip = slip.Kind };

    /// <summary>True if the number is right, so that later parts built on it are right as well.</summary>
    public bool IsRightNumber => Outcome is Outcome.Sound or Outcome.ValueOnly;
}
