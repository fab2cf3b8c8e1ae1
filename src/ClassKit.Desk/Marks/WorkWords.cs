using ClassKit.Terms.Work;

namespace ClassKit.Desk.Marks;

/// <summary>What a kind of work is called: on pages, and in the description of a term.</summary>
internal static class WorkWords
{
    public static string Of(WorkKind kind) =>
        kind switch
        {
            WorkKind.CalculationSet => "practice that was handed out here",
            WorkKind.BenchWork => "work at the bench",
            WorkKind.WrittenAnswers => "answers in words",
            WorkKind.TypedMarks => "marks from anywhere else",
        };

    /// <summary>As the column <c>Kind</c> has it.</summary>
    public static string InFile(WorkKind kind) =>
        kind switch
        {
            WorkKind.CalculationSet => "calculations",
            WorkKind.BenchWork => "bench work",
            WorkKind.WrittenAnswers => "written answers",
            WorkKind.TypedMarks => "typed marks",
        };
}
