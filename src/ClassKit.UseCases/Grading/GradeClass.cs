using ClassKit.Grading;
using ClassKit.Grading.Corrections;
using ClassKit.Grading.Lateness;
using ClassKit.Grading.Results;
using ClassKit.Grading.Summaries;
using ClassKit.UseCases.Running;
using ClassKit.Wording.Gradebooks;

namespace ClassKit.UseCases.Grading;

/// <summary>Grades what a class returned.</summary>
public static class GradeClass
{
    /// <summary>The kind of folder that its files go into; see <see cref="GradeFiles"/>.</summary>
    public const string Kind = "grade";

    /// <summary>Reads and judges what was returned, and puts the instructor's corrections over it.</summary>
    /// <exception cref="OperationCanceledException">The run was stopped.</exception>
    public static GradeResult Run(GradeRequest request, Run run)
    {
        ArgumentNullException.ThrowIfNull(request);
        ArgumentNullException.ThrowIfNull(run);
        var grader = new ClassGrader(request.Dealt, request.Earlier?.Judging);
        var judged = ParallelJudging.Judge(grader, request.Returned, run);
        foreach (var work in request.Paper.Work)
            judged.Add(grader.Judge(work));
        var grades = grader.Settle(judged);
        if (request.Deadline.Moment is { } due)
            grades = LateWork.Mark(grades, due);
        List<TypedPoints> takenOver = request.TakeOver ? [.. request.Typed.Points.Where(one => one.Fault is null)] : [];
        grades = Corrector.Apply(grades, [.. request.Corrections, .. takenOver.Select(one => one.ToCorrection(GradebookWords.TakenOver))]);
        grades = grades with
        {
            Waiting = [.. request.Typed.Points.Except(takenOver)],
            TakenOver = takenOver,
            UnreadGradebooks = request.Typed.Unread,
        };
        return new(grades, ClassSummarizer.Summarize(grades), request.Deadline)
        {
            Earlier = request.Earlier,
            Unread = request.Unread,
            PaperFaults = request.Paper.Faults,
        };
    }
}
