using System.Globalization;
using ClassKit.CellFormulas.Sheets;
using ClassKit.Exercises.Dealing;
using ClassKit.Exercises.Layout;
using ClassKit.Grading.Results;

namespace ClassKit.Workbooks.Gradebooks;

/// <summary>Where students and parts stand on the sheets that have a row a student and a column a part.</summary>
internal sealed class GradebookGrid
{
    public const string PointsSheet = "Gradebook";
    public const string OutcomesSheet = "Outcomes";
    public const string NameHead = "Student";
    public const string IdHead = "Id";
    public const int ExerciseRow = 4;
    public const int TagRow = 5;
    public const int OutOfRow = 6;
    public const int FirstStudentRow = 7;
    public const int NameColumn = 1;
    public const int IdColumn = 2;
    public const int StatusColumn = 3;
    public const int FirstPartColumn = 4;

    private readonly Dictionary<(string Exercise, string Part), int> _places;

    /// <param name="dealt">What was dealt.</param>
    /// <param name="students">How many rows there are.</param>
    public GradebookGrid(DealtClass dealt, int students)
    {
        Layout = dealt.LayOut();
        Exercises = [.. Layout.Exercises.Where(exercise => exercise.Answers.Count > 0)];
        Answers = [.. Exercises.SelectMany(exercise => exercise.Answers)];
        _places = Layout
            .Exercises.SelectMany(exercise => exercise.Answers.Select(answer => (exercise.Exercise.Id, answer.Part.Id)))
            .Index()
            .ToDictionary(entry => entry.Item, entry => entry.Index);
        LastStudentRow = FirstStudentRow + Math.Max(students, 1) - 1;
    }

    public PracticeLayout Layout { get; }

    /// <summary>The exercises that have parts, in order.</summary>
    public IReadOnlyList<ExerciseLayout> Exercises { get; }

    /// <summary>Every part in order; a part's column is <see cref="FirstPartColumn"/> plus its index.</summary>
    public IReadOnlyList<AnswerPlace> Answers { get; }

    public int LastStudentRow { get; }

    public int LastPartColumn => FirstPartColumn + Answers.Count - 1;

    public string TagOf(AnswerGrade answer) => Answers[PlaceOf(answer)].Tag;

    /// <summary>The column of an answer's part. Columns of parts that a student was not asked stay empty in their row.</summary>
    public int ColumnOf(AnswerGrade answer) => FirstPartColumn + PlaceOf(answer);

    private int PlaceOf(AnswerGrade answer) => _places[(answer.Exercise.Id, answer.Part.Id)];

    /// <summary>The range of a student's parts, such as <c>D7:F7</c>, its rows fixed if wanted.</summary>
    public string PartsOf(int row, bool isRowFixed = false) => Along(row, FirstPartColumn, LastPartColumn, isRowFixed);

    /// <summary>A range along a row, such as <c>D7:F7</c>, its rows fixed if wanted.</summary>
    public static string Along(int row, int first, int last, bool isRowFixed = false)
    {
        var dollar = isRowFixed ? "$" : "";
        return string.Create(
            CultureInfo.InvariantCulture,
            $"{CellAddress.ColumnLetters(first)}{dollar}{row}:{CellAddress.ColumnLetters(last)}{dollar}{row}"
        );
    }

    /// <summary>The range of a column's students, such as <c>D$7:D$30</c>.</summary>
    public string StudentsOf(int column)
    {
        var letters = CellAddress.ColumnLetters(column);
        return string.Create(CultureInfo.InvariantCulture, $"{letters}${FirstStudentRow}:{letters}${LastStudentRow}");
    }
}
