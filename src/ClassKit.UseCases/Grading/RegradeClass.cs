using ClassKit.Grading.Regrading;
using ClassKit.UseCases.Running;

namespace ClassKit.UseCases.Grading;

/// <summary>
/// Grades a class again under a changed marking scheme or corrected keys, and says who changes and why before anything is written.
/// </summary>
public static class RegradeClass
{
    /// <summary>Grades again, as the record was judged, and compares.</summary>
    /// <exception cref="OperationCanceledException">The run was stopped.</exception>
    public static RegradeResult Run(RegradeRequest request, Run run)
    {
        ArgumentNullException.ThrowIfNull(request);
        var now = GradeClass.Run(request.Again with { Earlier = request.Earlier }, run);
        return new(now, request.Earlier, GradeComparison.Between(request.Earlier, now.Grades));
    }
}
