using ClassKit.Exercises.Cohorts;
using ClassKit.Exercises.Dealing;
using ClassKit.Grading.Results;
using ClassKit.Pages.Feedback;

namespace ClassKit.Pages.ClassPrints;

/// <summary>
/// What one file that is printed for a class takes: the list of who gets what, then everybody's sheets, each on a sheet of their own.
/// </summary>
/// <param name="Students">Who gets how much, in the order of the class.</param>
/// <param name="Blanks">Of the students' sides, those that are left blank so that the next one begins on a fresh sheet.</param>
public sealed record PrintedClass(IReadOnlyList<PrintedStudent> Students, int Blanks)
{
    /// <summary>
    /// So many students have room on each side of the list, on Letter too: it ends where it is said to, and the first student begins on a
    /// front.
    /// </summary>
    private const int OnASide = 30;

    private const int FeedbackSides = 2;

    /// <summary>The students on each side of the list; one side at least.</summary>
    public IReadOnlyList<PrintedStudent[]> ListSides =>
        Students.Count == 0
            ?
            [
                [],
            ]
            : [.. Students.Chunk(OnASide)];

    /// <summary>Sheets of paper, printed on both sides.</summary>
    public int Sheets => (ListSides.Count + 1) / 2 + Students.Sum(student => student.Sheets);

    /// <summary>Sides that have something on them.</summary>
    public int Sides => ListSides.Count + Students.Sum(student => student.Sides) - Blanks;

    /// <summary>The exercises of those whose sheets are in the file for the class.</summary>
    /// <param name="dealt">What was dealt.</param>
    /// <param name="part">Which students; null for all.</param>
    public static PrintedClass OfSheets(DealtClass dealt, ClassPart? part = null)
    {
        ArgumentNullException.ThrowIfNull(dealt);
        var seats = (part?.Of(dealt.Students) ?? dealt.Students).Where(seat => !seat.LargePrint).ToList();
        return new(
            [.. seats.Select(seat => PrintedStudent.Of(seat.Who, dealt.ExercisesOf(seat).Count))],
            seats.Count(seat => dealt.ExercisesOf(seat).Count % 2 == 1)
        );
    }

    /// <summary>The feedback of those whose sheets are in the file for the class.</summary>
    /// <param name="grades">The grades.</param>
    /// <param name="part">Which students; null for all.</param>
    public static PrintedClass OfFeedback(ClassGrades grades, ClassPart? part = null)
    {
        ArgumentNullException.ThrowIfNull(grades);
        var large = grades.Dealt.Students.Where(seat => seat.LargePrint).Select(seat => seat.Who.Shown).ToHashSet(StringComparer.Ordinal);
        var told = (part?.Of(grades.Students) ?? grades.Students)
            .Where(student => IsTold(student) && !large.Contains(student.Who.Shown))
            .ToList();
        return new(
            [.. told.Select(student => PrintedStudent.Of(student.Who, FeedbackSides))],
            told.Count(student => !student.HasPoints || new FeedbackPlaces(ExerciseFeedback.Of(student, grades.Dealt)).Missed.Count == 0)
        );
    }

    /// <summary>Who has handed nothing in gets no feedback.</summary>
    internal static bool IsTold(StudentGrade student) => student.Status != GradeStatus.Missing || student.HasPoints;
}
