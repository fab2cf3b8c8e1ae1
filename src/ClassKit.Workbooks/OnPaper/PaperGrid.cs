using ClassKit.Exercises.Authoring;
using ClassKit.Exercises.Dealing;
using ClassKit.Exercises.Layout;

namespace ClassKit.Workbooks.OnPaper;

/// <summary>
/// Where students and parts stand on the sheet for answers on paper: a row a student, a column a part, and beside a part that asks for the
/// method one for the tick.
/// </summary>
internal sealed class PaperGrid
{
    public const string Sheet = "Paper";
    public const string NameHead = "Student";
    public const string IdHead = "Id";
    public const string Tick = "✓";
    public const int DealRow = 3;
    public const int ExerciseRow = 4;
    public const int UnitRow = 5;

    /// <summary>The tags stand last in the head, so that nothing between them and the students is taken for a student.</summary>
    public const int TagRow = 6;
    public const int FirstStudentRow = 7;
    public const int NameColumn = 1;
    public const int IdColumn = 2;
    private const int FirstPartColumn = 3;

    public PaperGrid(DealtClass dealt)
    {
        Exercises = [.. dealt.LayOut().Exercises.Where(exercise => exercise.Answers.Count > 0)];
        var column = FirstPartColumn;
        List<PaperColumn> columns = [];
        foreach (var exercise in Exercises)
        {
            foreach (var answer in exercise.Answers)
            {
                var asksMethod = AsksMethod(answer.Part);
                columns.Add(new(exercise, answer, column, asksMethod ? column + 1 : null));
                column += asksMethod ? 2 : 1;
            }
        }
        Columns = columns;
        LastColumn = column - 1;
    }

    public IReadOnlyList<ExerciseLayout> Exercises { get; }

    public IReadOnlyList<PaperColumn> Columns { get; }

    public int LastColumn { get; }

    /// <summary>What the head of a part's tick says.</summary>
    public static string TickHead(AnswerPlace answer) => $"{answer.Tag} {Tick}";

    private static bool AsksMethod(Part part) => part is { FormulaAsked: true, IsNumber: true };
}
