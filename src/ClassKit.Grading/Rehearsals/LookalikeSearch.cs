using ClassKit.Exercises.Authoring;
using ClassKit.Exercises.Dealing;
using ClassKit.Exercises.Keys;
using ClassKit.Grading.Results;

namespace ClassKit.Grading.Rehearsals;

/// <summary>Looks for misconceptions that cannot be told apart on the numbers that students really have before them.</summary>
/// <remarks>
/// On right earlier answers no variant is dealt in which two misconceptions meet. On a student's own wrong ones they may: there the
/// grader's order decides, right methods before misconceptions, and a misconception that is listed earlier before a later one.
/// </remarks>
public static class LookalikeSearch
{
    /// <summary>Every pair that met, those that met for most students first.</summary>
    public static IReadOnlyList<Lookalike> In(ClassGrades grades)
    {
        ArgumentNullException.ThrowIfNull(grades);
        return
        [
            .. grades
                .Dealt.Exercises.SelectMany(exercise =>
                    In(
                        exercise,
                        grades.Dealt,
                        [.. grades.Students.Where(student => student.Answers.Any(answer => answer.Exercise.Id == exercise.Id))]
                    )
                )
                .OrderByDescending(pair => pair.Students),
        ];
    }

    private static IEnumerable<Lookalike> In(Exercise exercise, DealtClass dealt, List<StudentGrade> students)
    {
        var seats = students.Select(student => (Grade: student, Seat: dealt.SeatOf(student.Who))).ToList();
        foreach (var part in exercise.Parts.Where(part => part.IsNumber && part.Misconceptions.Count > 0))
        {
            var met = seats
                .SelectMany(student => Meetings(part, student.Seat.GivensOf(exercise.Id), Sheet(student.Grade, student.Seat, exercise)))
                .ToList();
            foreach (var pair in met.GroupBy(meeting => (meeting.One, meeting.Other)))
                yield return new(exercise, part, pair.Key.One, pair.Key.Other, pair.Count(), students.Count, pair.First().Value);
        }
    }

    private static (IReadOnlyDictionary<string, double> Right, IReadOnlyDictionary<string, double> Own) Sheet(
        StudentGrade student,
        DealtStudent seat,
        Exercise exercise
    )
    {
        var right = seat.AnswersOf(exercise.Id);
        var own = new Dictionary<string, double>(right);
        foreach (var answer in student.Answers.Where(answer => answer.Exercise.Id == exercise.Id && answer.Value.IsNumber))
            own[answer.Part.Id] = answer.Value.Number;
        return (right, own);
    }

    /// <summary>The pairs of one part that come within its tolerance for one student, each once.</summary>
    private static IEnumerable<(Misconception One, Misconception? Other, double Value)> Meetings(
        Part part,
        IReadOnlyDictionary<string, decimal> givens,
        (IReadOnlyDictionary<string, double> Right, IReadOnlyDictionary<string, double> Own) sheet
    )
    {
        var names = (KeyValues.Names(givens, sheet.Right), KeyValues.Names(givens, sheet.Own));
        List<double> Values(CellFormulas.Formulas.CellFormula formula) =>
            [.. ((double?[])[KeyValues.Number(formula, names.Item1), KeyValues.Number(formula, names.Item2)]).OfType<double>()];
        List<(Misconception? Method, List<double> Values)> methods =
        [
            (null, Values(part.Key)),
            .. part.Misconceptions.Select(one => ((Misconception?)one, Values(one.Formula))),
        ];
        for (var later = 1; later < methods.Count; later++)
        {
            for (var earlier = 0; earlier < later; earlier++)
            {
                // From an earlier answer of 0 every method leads to 0, which says nothing about the methods.
                var meeting = methods[later]
                    .Values.Where(value => value != 0 && methods[earlier].Values.Exists(other => part.Tolerance.Accepts(other, value)))
                    .ToList();
                if (meeting.Count > 0)
                    yield return (methods[later].Method!, methods[earlier].Method, meeting[0]);
            }
        }
    }
}
