using ClassKit.Exercises.Dealing;
using ClassKit.Grading.Results;

namespace ClassKit.Grading.OnPaper;

/// <summary>All that one student answered on paper.</summary>
/// <param name="Student">The student, with what was dealt to them.</param>
/// <param name="Place">Where it stands, such as <c>paper-answers.xlsx row 7</c>; another for every student.</param>
/// <param name="Answers">At most one a part; parts without one are blank.</param>
public sealed record PaperWork(DealtStudent Student, string Place, IReadOnlyList<PaperAnswer> Answers)
{
    /// <summary>The SHA-256 of the workbook that it was typed into, in lower-case hexadecimal.</summary>
    public string? Digest { get; init; }

    /// <summary>What was seen of the working for a part.</summary>
    internal PaperWorking Working(string exercise, string part) =>
        Answers.Any(answer => answer.MethodShown && answer.Exercise == exercise && answer.Part == part)
            ? PaperWorking.ShowsMethod
            : PaperWorking.NotSeen;
}
