using ClassKit.Content.Diagnostics;
using ClassKit.Exercises.Dealing;
using ClassKit.Exercises.Marking;
using ClassKit.Grading.OnPaper;
using ClassKit.Grading.Results;
using ClassKit.UseCases.Intake;

namespace ClassKit.UseCases.Grading;

/// <summary>What grading takes: all of it content, wherever it comes from. <see cref="GradePaths"/> reads it from folders.</summary>
/// <param name="Dealt">What was dealt to whom.</param>
/// <param name="Returned">What came back.</param>
public sealed record GradeRequest(DealtClass Dealt, ReturnedFiles Returned)
{
    /// <summary>What was answered on paper.</summary>
    public PaperReading Paper { get; init; } = PaperReading.Nothing;

    /// <summary>What the instructor decided on answers.</summary>
    public IReadOnlyList<Correction> Corrections { get; init; } = [];

    /// <summary>When the work was due.</summary>
    public SettledDeadline Deadline { get; init; } = SettledDeadline.None;

    /// <summary>Points that the instructor typed into earlier gradebooks.</summary>
    public TypedIntoGradebook Typed { get; init; } = TypedIntoGradebook.Nothing;

    /// <summary>True to let points that were typed count as corrections; false only to show them.</summary>
    public bool TakeOver { get; init; }

    /// <summary>An earlier grading, to judge in the same way on the same fresh inputs; null to judge anew.</summary>
    public ClassGrades? Earlier { get; init; }

    /// <summary>Why an earlier grading that there is cannot be read; empty if it can.</summary>
    public IReadOnlyList<Diagnostic> Unread { get; init; } = [];
}
