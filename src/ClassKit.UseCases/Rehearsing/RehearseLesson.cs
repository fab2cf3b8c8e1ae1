using ClassKit.Content.Diagnostics;
using ClassKit.Exercises.Cohorts;
using ClassKit.Exercises.Dealing;
using ClassKit.Exercises.Identity;
using ClassKit.Exercises.Layout;
using ClassKit.Exercises.Randomness;
using ClassKit.Grading.Foresight;
using ClassKit.Grading.Rehearsals;
using ClassKit.Grading.Results;
using ClassKit.UseCases.Dealing;
using ClassKit.UseCases.Grading;
using ClassKit.UseCases.Intake;
using ClassKit.UseCases.Running;
using ClassKit.Workbooks.Dealing;
using ClassKit.Workbooks.Filling;

namespace ClassKit.UseCases.Rehearsing;

/// <summary>
/// Lets an invented class take a lesson's exercises before the real one does, and holds the grader against what is known to be true.
/// </summary>
public static class RehearseLesson
{
    /// <summary>The kind of folder that its files go into; see <see cref="RehearsalFiles"/>.</summary>
    public const string Kind = "rehearse";

    /// <summary>The most students that can be invented.</summary>
    public const int MostStudents = 500;

    /// <summary>Invents the class, deals, fills in, grades and reports.</summary>
    /// <returns>The rehearsal, or why there is none.</returns>
    /// <exception cref="OperationCanceledException">The run was stopped.</exception>
    public static Reading<RehearsalMade> Run(RehearsalRequest request, Run run)
    {
        ArgumentNullException.ThrowIfNull(request);
        ArgumentNullException.ThrowIfNull(run);
        var seed = request.Wish.Seed;
        var invented = InventedClass.Invent(request.Students, seed);
        var roster = new Roster("Invented class", [.. invented.Select(student => student.Student)]);
        var dealing = DealPractice.Run(new(request.Set, roster, request.Wish with { Purpose = DealPurpose.Rehearsal }), run);
        if (!dealing.Succeeded)
            return new(null, dealing.Problems);

        var dealt = dealing.Model.Dealt;
        var layout = dealt.LayOut();
        var unlisted = dealt.Exercises.ToDictionary(exercise => exercise.Id, ForeseenTurns.Of);
        var answers = invented.Zip(dealt.Students, (student, seat) => Answer(layout, student, seat, unlisted, seed)).ToList();
        var writer = new DealtWorkbookWriter(dealt);
        List<byte[]> returned =
        [
            .. run.Each(RunStep.FillingIn, dealt.Students)
                .Zip(answers, (seat, filled) => WorkbookFiller.Fill(writer.Write(seat), Returning.Edits(layout, filled))),
        ];
        var graded = GradeClass.Run(new(dealt, ReturnedFiles.Of([.. dealt.Students.Zip(returned, Handed)])), run);
        return new(new(Report(dealt, invented, answers, graded.Grades), dealing.Model, returned, graded), []);
    }

    private static Upload Handed(DealtStudent seat, byte[] workbook) =>
        new($"{seat.Who.Id}.xlsx", () => new MemoryStream(workbook, writable: false));

    private static List<RehearsedAnswer> Answer(
        PracticeLayout layout,
        InventedStudent student,
        DealtStudent seat,
        Dictionary<string, IReadOnlyList<ForeseenTurn>> unlisted,
        ulong seed
    )
    {
        var random = SeededDraws.For(seed, "answers", student.Student.Id);
        return
        [
            .. layout
                .Of(seat)
                .Exercises.SelectMany(exercise =>
                {
                    var sheet = new AnswerSheet(exercise, seat, unlisted[exercise.Exercise.Id]);
                    return exercise.Exercise.Parts.Select(part => sheet.Answer(part, student.Choose(random), random.Below(1000))).ToList();
                }),
        ];
    }

    private static RehearsalReport Report(
        DealtClass dealt,
        IReadOnlyList<InventedStudent> invented,
        List<List<RehearsedAnswer>> answers,
        ClassGrades grades
    )
    {
        var byAbility = invented
            .Select((student, index) => (student.Ability, index))
            .OrderByDescending(student => student.Ability)
            .Select(student => student.index)
            .ToList();
        var strong = byAbility.Take(byAbility.Count / 2).ToHashSet();
        var pairs = answers
            .SelectMany(
                (list, student) =>
                    list.Zip(grades.Students[student].Answers, (answer, grade) => (Student: student, Answer: answer, Grade: grade))
            )
            .ToList();
        return new(
            dealt,
            [
                .. dealt.Exercises.SelectMany(exercise =>
                    exercise.Parts.Select(part =>
                    {
                        var of = pairs.Where(pair => pair.Answer.Exercise == exercise.Id && pair.Answer.Part == part.Id).ToList();
                        double? Share(bool abler) =>
                            of.Where(pair => pair.Grade.IsJudged && strong.Contains(pair.Student) == abler)
                                .Select(pair => pair.Grade.ShowsMethod ? 1.0 : 0)
                                .Cast<double?>()
                                .Average();
                        return new RehearsedPart(
                            exercise,
                            part,
                            of.Count,
                            of.Count(pair => IsRight(pair.Answer, pair.Grade)),
                            Share(true),
                            Share(false)
                        )
                        {
                            ActedOut = of.Count(pair => pair.Answer.Misconception is not null),
                            Named = of.Count(pair => pair.Answer.Misconception is { } acted && acted == pair.Grade.Misconception?.Id),
                            NamedWrongly = of.Count(pair =>
                                pair.Answer.Truth is Outcome.Sound or Outcome.ValueOnly && pair.Grade.Misconception is not null
                            ),
                        };
                    })
                ),
            ],
            [
                .. pairs
                    .Where(pair => !IsRight(pair.Answer, pair.Grade))
                    .GroupBy(pair => (pair.Answer.Truth, pair.Grade.Outcome))
                    .Select(group => new Confusion(
                        group.Key.Truth,
                        group.Key.Outcome,
                        $"{dealt.Students[group.First().Student].Who.Id}, {group.First().Answer.Exercise}.{group.First().Answer.Part}: {group.First().Answer.Content ?? "nothing"}",
                        group.Count()
                    ))
                    .OrderByDescending(confusion => confusion.Count),
            ],
            LookalikeSearch.In(grades),
            [.. invented.Zip(dealt.Students, (student, seat) => student.Pace * dealt.ExercisesOf(seat).Sum(exercise => exercise.Minutes))]
        );
    }

    private static bool IsRight(RehearsedAnswer answer, AnswerGrade grade) =>
        answer.Truth == grade.Outcome && answer.Misconception == grade.Misconception?.Id;
}
