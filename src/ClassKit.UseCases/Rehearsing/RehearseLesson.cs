using ClassKit.Exercises;
using ClassKit.Grading;
using ClassKit.Pages;
using ClassKit.Workbooks;

namespace ClassKit.UseCases;

/// <summary>Lets an invented class take a lesson's exercises before the real one does, and holds the grader against what is known to be true.</summary>
public static class RehearseLesson
{
    /// <summary>The command, and the kind of its output folder.</summary>
    public const string Kind = "rehearse";

    /// <summary>The most students that can be invented.</summary>
    public const int MostStudents = 500;

    /// <summary>Reads a lesson, or a folder of exercises, invents the class, deals, fills in, grades and reports.</summary>
    /// <param name="folder">The lesson's folder, or one of exercises.</param>
    /// <param name="students">How many to invent, 2 to <see cref="MostStudents"/>.</param>
    /// <param name="wish">What is dealt to them.</param>
    public static Produced Make(string folder, int students, DealWish wish)
    {
        ArgumentNullException.ThrowIfNull(wish);
        var set = PracticeSet.Read(folder, wish.Set, wish.Seed);
        return set.Succeeded ? Make(set.Model, students, wish, folder) : Produced.Nothing(set.Problems);
    }

    private static Produced Make(PracticeSet set, int students, DealWish wish, string folder)
    {
        var seed = wish.Seed;
        var invented = InventedClass.Invent(students, seed);
        var roster = new Roster("Invented class", [.. invented.Select(student => student.Student)]);
        var (dealing, dealt) = DealPractice.Make(set, roster, wish with { Purpose = DealPurpose.Rehearsal }, folder);
        if (dealt is null) return dealing;

        var answers = invented.Zip(dealt.Students, (student, seat) => Answer(dealt, student, seat, seed)).ToList();
        var workbooks = dealing.Files.ToDictionary(file => file.Path);
        var returned = dealt.Students.Zip(answers, (seat, filled) => new OutputFile(
            $"returned/{seat.Student.Id}.xlsx", WorkbookFiller.Fill(workbooks[seat.Workbook].Content, Returning.Edits(seat, filled)))).ToList();
        var grades = ClassGrader.Grade(dealt, [.. returned.Select(file => FileReading.Read(new(Path.GetFileName(file.Path), file.Content, null)))]);
        var report = Report(dealt, invented, answers, grades);
        return new(
            [
                OutputFile.OfText("rehearsal.html", HtmlPages.Rehearsal(report)),
                .. dealing.Files.Select(file => file.Below("dealt")),
                .. returned,
                .. GradeClass.Make(grades).Files.Select(file => file.Below("graded")),
            ],
            [$"{students} invented students, {report.Answers} answers: the grader judged {report.GradedRight} of them as they were made. Half of them are done after about {report.DoneAfter(0.5):0} minutes, nine in ten after {report.DoneAfter(0.9):0}."],
            []);
    }

    private static List<RehearsedAnswer> Answer(DealtClass dealt, InventedStudent student, DealtStudent seat, ulong seed)
    {
        var random = SeededDraws.For(seed, "answers", student.Student.Id);
        return
        [
            .. dealt.ExercisesOf(seat).SelectMany(exercise =>
            {
                var sheet = new AnswerSheet(exercise, seat);
                return exercise.Parts.Select(part => sheet.Answer(part, student.Choose(random), random.Below(1000))).ToList();
            }),
        ];
    }

    private static RehearsalReport Report(
        DealtClass dealt, IReadOnlyList<InventedStudent> invented, List<List<RehearsedAnswer>> answers, ClassGrades grades)
    {
        var byAbility = invented.Select((student, index) => (student.Ability, index)).OrderByDescending(student => student.Ability).Select(student => student.index).ToList();
        var strong = byAbility.Take(byAbility.Count / 2).ToHashSet();
        var pairs = answers.SelectMany((list, student) => list.Zip(grades.Students[student].Answers, (answer, grade) => (Student: student, Answer: answer, Grade: grade))).ToList();
        return new(dealt,
        [
            .. dealt.Exercises.SelectMany(exercise => exercise.Parts.Select(part =>
            {
                var of = pairs.Where(pair => pair.Answer.Exercise == exercise.Id && pair.Answer.Part == part.Id).ToList();
                double? Share(bool abler) => of.Where(pair => strong.Contains(pair.Student) == abler).Select(pair => ShowsMethod(pair.Grade) ? 1.0 : 0).Cast<double?>().Average();
                return new RehearsedPart(exercise, part, of.Count, of.Count(pair => IsRight(pair.Answer, pair.Grade)), Share(true), Share(false))
                {
                    ActedOut = of.Count(pair => pair.Answer.Misconception is not null),
                    Named = of.Count(pair => pair.Answer.Misconception is { } acted && acted == pair.Grade.Misconception?.Id),
                    NamedWrongly = of.Count(pair => pair.Answer.Truth is Outcome.Sound or Outcome.ValueOnly && pair.Grade.Misconception is not null),
                };
            })),
        ],
        [
            .. pairs.Where(pair => !IsRight(pair.Answer, pair.Grade))
                .GroupBy(pair => (pair.Answer.Truth, pair.Grade.Outcome))
                .Select(group => new Confusion(group.Key.Truth, group.Key.Outcome,
                    $"{dealt.Students[group.First().Student].Student.Id}, {group.First().Answer.Exercise}.{group.First().Answer.Part}: {group.First().Answer.Content ?? "nothing"}", group.Count()))
                .OrderByDescending(confusion => confusion.Count),
        ],
        LookalikeSearch.In(grades),
        [.. invented.Zip(dealt.Students, (student, seat) => student.Pace * dealt.ExercisesOf(seat).Sum(exercise => exercise.Minutes))]);
    }

    private static bool IsRight(RehearsedAnswer answer, AnswerGrade grade) =>
        answer.Truth == grade.Outcome && answer.Misconception == grade.Misconception?.Id;

    private static bool ShowsMethod(AnswerGrade grade) => grade.Outcome is Outcome.Sound or Outcome.FollowThrough;
}
