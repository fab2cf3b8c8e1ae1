using ClassKit.Exercises.Cohorts;

namespace ClassKit.Pages.ClassPrints;

/// <summary>One student's part of a file that is printed for a whole class.</summary>
/// <param name="Student">Whose it is.</param>
/// <param name="Sides">Printed sides; even, so that the next student begins on a fresh sheet of paper.</param>
public sealed record PrintedStudent(Student Student, int Sides)
{
    /// <summary>Sheets of paper, printed on both sides.</summary>
    public int Sheets => Sides / 2;

    /// <summary>As many sides as are wanted, and a blank one where they would end on a front.</summary>
    public static PrintedStudent Of(Student student, int sides) => new(student, sides + sides % 2);
}
