using ClassKit.Grading.Findings.Refusals;

namespace ClassKit.Grading.Results;

/// <summary>Why what was typed into a gradebook cannot be read.</summary>
public abstract record GradebookFault
{
    private GradebookFault() { }

    /// <summary>It is no workbook that can be read.</summary>
    /// <param name="Why">Why not.</param>
    public sealed record Refused(Refusal Why) : GradebookFault;

    /// <summary>It is empty or far too large for one.</summary>
    public sealed record NoGradebook : GradebookFault;

    /// <summary>It has no sheet of points.</summary>
    /// <param name="Sheet">What that is called.</param>
    /// <param name="Column">The column that it has.</param>
    public sealed record NoPoints(string Sheet, string Column) : GradebookFault;

    /// <summary>It does not say what was graded, so that what was typed cannot be told from it.</summary>
    /// <param name="Sheet">The sheet that would.</param>
    public sealed record NoAnswers(string Sheet) : GradebookFault;

    /// <summary>The system does not give it.</summary>
    /// <param name="Message">What the system says.</param>
    public sealed record Unopened(string Message) : GradebookFault;
}
