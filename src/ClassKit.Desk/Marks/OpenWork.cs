using ClassKit.Exercises.Cohorts;
using ClassKit.Terms.Grades;
using ClassKit.Terms.Work;
using ClassKit.Wording.Counts;

namespace ClassKit.Desk.Marks;

/// <summary>What of a work is still to come, so that grades may change: marks, and answers to decide on.</summary>
/// <param name="Work">The work.</param>
/// <param name="Missing">Who has no mark of it yet.</param>
/// <param name="ToDecide">Who has answers that nobody has decided on, each with how many.</param>
public sealed record OpenWork(Assignment Work, IReadOnlyList<Student> Missing, IReadOnlyList<(Student Who, int Answers)> ToDecide)
{
    /// <summary>So many names are read at a glance; of more, how many they are says more.</summary>
    private const int MostNamed = 6;

    /// <summary>What the work is called.</summary>
    public string Title => Work.Title;

    /// <summary>What is to come, and from whom.</summary>
    public string Words =>
        string.Join(
            "; ",
            (string[])
                [
                    .. Missing.Count > 0 ? [$"no mark yet for {Names(Missing)}"] : (string[])[],
                    .. ToDecide.Count > 0
                        ?
                        [
                            $"{Counted.Of(ToDecide.Sum(one => one.Answers), "answer")} to decide on, of {Names([.. ToDecide.Select(one => one.Who)])}",
                        ]
                        : (string[])[],
                ]
        );

    /// <summary>The works of which something is to come, in the order of the grades.</summary>
    public static IReadOnlyList<OpenWork> Of(IReadOnlyList<TermGrade> grades) =>
        [
            .. grades
                .SelectMany(grade => grade.Works.Select(work => (grade.Student, Work: work)))
                .GroupBy(one => one.Work.Assignment)
                .Select(of => new OpenWork(
                    of.Key,
                    [.. of.Where(one => one.Work.IsOpen).Select(one => one.Student)],
                    [.. of.Where(one => one.Work.Undecided > 0).Select(one => (one.Student, one.Work.Undecided))]
                ))
                .Where(work => work.Missing.Count + work.ToDecide.Count > 0),
        ];

    /// <summary>Students by name; with their number in front where they are many.</summary>
    public static string Names(IReadOnlyList<Student> students)
    {
        ArgumentNullException.ThrowIfNull(students);
        var names = string.Join(", ", students.Select(student => student.Shown));
        return students.Count > MostNamed ? $"{students.Count} students: {names}" : names;
    }
}
