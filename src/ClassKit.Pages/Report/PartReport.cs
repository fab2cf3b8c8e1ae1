using ClassKit.Exercises.Cohorts;

namespace ClassKit.Pages.Report;

/// <summary>A report about some students of a class that is too large for one page.</summary>
/// <param name="Part">Which students.</param>
/// <param name="File">The page, beside the report of the whole class.</param>
/// <param name="From">The first student, as pages call them.</param>
/// <param name="To">The last.</param>
public sealed record PartReport(ClassPart Part, string File, string From, string To);
