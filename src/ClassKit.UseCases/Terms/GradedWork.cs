using ClassKit.Content.Classes;
using ClassKit.Content.Diagnostics;
using ClassKit.Content.Terms;
using ClassKit.Exercises.Cohorts;
using ClassKit.Grading.Results;
using ClassKit.Notes;
using ClassKit.Terms.Marks;
using ClassKit.UseCases.Grading;

namespace ClassKit.UseCases.Terms;

/// <summary>What grades say of a calculation set.</summary>
/// <param name="OutOf">The points possible; null where nobody has any.</param>
/// <param name="Attempts">Every student's marked sittings.</param>
/// <param name="Lessons">The ids of the lessons that were dealt.</param>
internal sealed record GradedWork(decimal? OutOf, IReadOnlyList<Attempt> Attempts, IReadOnlyCollection<string> Lessons)
{
    /// <summary>The day on which the first sitting was due, on the class's clocks; null where nobody has said.</summary>
    public DateOnly? Due { get; init; }

    /// <summary>By the graded folders that the term names.</summary>
    public static GradedWork Read(PlannedWork work, TermPlan plan, List<Diagnostic> problems, List<Note> notes)
    {
        List<(int, ClassGrades)> sittings = [];
        var roster = Roster(plan);
        foreach (var (index, folder) in work.Graded.Index())
        {
            var grades = GradedFolder.Read(folder, dealt: null);
            problems.AddRange(grades.Problems);
            if (!grades.Succeeded)
                continue;
            List<Student> gone = [.. grades.Model.Students.Select(student => student.Who).Where(who => !roster.Contains(who.Id))];
            if (
                gone.Count > 0
                && ChangedList.IsOfSameClass([.. grades.Model.Students.Select(student => student.Who.Id)], plan.Class.Students)
            )
                notes.Add(new Note.LeftTheClass(work.Title, gone));
            else
                problems.AddRange(
                    gone.Select(stranger => new Diagnostic(
                        plan.Path,
                        work.Line,
                        $"`{folder}` has a student `{stranger.Id}`, who is not on the roster",
                        "Name the folder of this class, or add the student to the roster."
                    ))
                );
            problems.AddRange(
                grades
                    .Model.Students.Where(student => student.HasPoints && (student.Points > student.OutOf || student.Points < 0))
                    .Select(student => new Diagnostic(
                        Path.Combine(folder, GradesJson.FileName),
                        null,
                        $"`{student.Who.Id}` has {student.Points} of {student.OutOf} points",
                        "Grade again: nobody earns more than is possible."
                    ))
            );
            problems.AddRange(Others(grades.Model, plan).Select(pair => Another(pair.Earlier, pair.Now, folder, plan, work)));
            sittings.Add((index + 1, grades.Model));
        }
        problems.AddRange(SittingOrder.Faults(plan, work, [.. sittings.Select(sat => (work.Graded[sat.Item1 - 1], sat.Item2.Dealt))]));
        return Of(work, plan, sittings, notes);
    }

    /// <summary>By grades, each with the number of its sitting; students who are not on the roster are left out.</summary>
    public static GradedWork Of(
        PlannedWork work,
        TermPlan plan,
        IReadOnlyList<(int Sitting, ClassGrades Grades)> sittings,
        List<Note> notes
    )
    {
        List<Attempt> attempts = [];
        foreach (var (sitting, grades) in sittings)
        {
            var roster = Roster(plan);
            roster.ExceptWith(Others(grades, plan).Select(pair => pair.Now.Id));
            attempts.AddRange(
                grades
                    .Students.Where(student =>
                        roster.Contains(student.Who.Id)
                        && student.OutOf > 0
                        && student.HasPoints
                        && !student.CameBackEmpty
                        && student.Points >= 0
                        && student.Points <= student.OutOf
                    )
                    .Select(student => new Attempt(
                        student.Who.Id,
                        work.Title,
                        sitting,
                        Mark.Of(student.Points, student.OutOf) with
                        {
                            Lateness = Of(student.Late),
                            Undecided = student.Answers.Count(answer => answer.IsUndecided),
                        }
                    ))
            );
            var undecided = grades.Students.Sum(student => student.Answers.Count(answer => answer.IsUndecided));
            if (grades.Students.Where(student => student.CameBackEmpty && roster.Contains(student.Who.Id)).ToList() is { Count: > 0 } empty)
                notes.Add(new Note.EmptyLeftOut(work.Title, [.. empty.Select(student => student.Who)]));
            if (undecided > 0)
                notes.Add(new Note.Undecided(work.Title, undecided, CorrectionsReader.FileName));
        }
        return new(
            attempts.Max(attempt => (decimal?)attempt.Mark.OutOf),
            attempts,
            [.. sittings.Select(sat => sat.Grades.Dealt.Lesson).Distinct()]
        )
        {
            Due = DueOf(sittings.OrderBy(sat => sat.Sitting).Select(sat => sat.Grades).FirstOrDefault()),
        };
    }

    /// <summary>The day on which graded work was due.</summary>
    public static DateOnly? DueOf(ClassGrades? grades) => grades?.Due is { } due ? DateOnly.FromDateTime(due.At.DateTime) : null;

    /// <summary>Whose id is another person's on the class list, as far as anybody has said: a mark must not go to them.</summary>
    private static IEnumerable<(Student Earlier, Student Now)> Others(ClassGrades grades, TermPlan plan) =>
        grades
            .Students.Join(
                plan.Class.Students,
                graded => graded.Who.Id,
                listed => listed.Id,
                (graded, listed) => (Earlier: graded.Who, Now: listed)
            )
            .Where(pair => !SamePerson.IsSurely(pair.Earlier, pair.Now));

    private static Diagnostic Another(Student earlier, Student now, string folder, TermPlan plan, PlannedWork work) =>
        new(
            plan.Path,
            work.Line,
            $"In `{folder}` the id `{now.Id}` is {earlier.Name}, and on the class list it is {now.Name}",
            $"If they are one person, write `{earlier.Name}` into a column `formerly` of their line in the class list. If they are two, give {now.Name} an id of their own."
        );

    private static HashSet<string> Roster(TermPlan plan) => [.. plan.Class.Students.Select(student => student.Id)];

    private static Lateness Of(Late? late) =>
        late switch
        {
            null => Lateness.InTime,
            { Off: > 0 } => Lateness.LateAndSettled,
            _ => Lateness.Late,
        };
}
