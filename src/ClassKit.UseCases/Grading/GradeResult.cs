using ClassKit.Content.Diagnostics;
using ClassKit.Grading.OnPaper;
using ClassKit.Grading.Pseudonyms;
using ClassKit.Grading.Results;
using ClassKit.Grading.Summaries;

namespace ClassKit.UseCases.Grading;

/// <summary>A class graded.</summary>
/// <param name="Grades">Every student's grade, and what became of every file.</param>
/// <param name="Summary">What they come to for the class.</param>
/// <param name="Deadline">When the work was due, and how that was settled.</param>
public sealed record GradeResult(ClassGrades Grades, ClassSummary Summary, SettledDeadline Deadline)
{
    /// <summary>The earlier grading that this one was judged like; null if there was none.</summary>
    public ClassGrades? Earlier { get; init; }

    /// <summary>Why an earlier grading that there is could not be read; empty if it could.</summary>
    public IReadOnlyList<Diagnostic> Unread { get; init; } = [];

    /// <summary>What was typed from paper and is not taken over.</summary>
    public IReadOnlyList<PaperFault> PaperFaults { get; init; } = [];

    /// <summary>The same without names, and apart from it the key that says who is who.</summary>
    /// <param name="secret">What the pseudonyms are made with.</param>
    public (GradeResult Reports, PseudonymKey Key) UnderPseudonyms(PseudonymSecret secret)
    {
        var key = new PseudonymKey(Grades.Dealt, secret);
        var grades = Pseudonymizer.Apply(Grades, key);
        return (
            this with
            {
                PaperFaults = [],
                Grades = grades,
                Summary = ClassSummarizer.Summarize(grades, WrongMethods.FewestWithoutNames),
            },
            key
        );
    }
}
