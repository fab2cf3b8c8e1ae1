using ClassKit.Exercises.Authoring;
using ClassKit.Exercises.Cohorts;
using ClassKit.Exercises.Dealing;
using ClassKit.Exercises.Layout;
using ClassKit.Exercises.Marking;
using ClassKit.Grading;
using ClassKit.Grading.Intake;
using ClassKit.Grading.Results;
using ClassKit.PracticeBank.Tests.Bank;
using ClassKit.UseCases.Rehearsing;
using ClassKit.Workbooks.Dealing;
using ClassKit.Workbooks.Filling;
using ClassKit.Workbooks.Returned;

namespace ClassKit.PracticeBank.Tests.Rehearsals;

/// <summary>An invented class takes the bank skill by skill, and acts out every misconception of every part.</summary>
/// <remarks>What each answer deserves is known, because it was made so: neither dealing nor making asks the grader.</remarks>
public sealed class BankRehearsalTests
{
    private static readonly int Students = Trials.Of(60, 3);

    /// <summary>Besides wrong turns: how the parts before and after one are answered.</summary>
    private static readonly AnswerWay[] Otherwise =
    [
        AnswerWay.Cells,
        AnswerWay.OneGo,
        AnswerWay.Cells,
        AnswerWay.Typed,
        AnswerWay.PartlyTyped,
        AnswerWay.TypedWithUnit,
        AnswerWay.Slip,
        AnswerWay.Blank,
        AnswerWay.HardCoded,
        AnswerWay.LeftAsText,
        AnswerWay.Filler,
    ];

    private static readonly MarkingScheme Marking = new("marks", "Marks", 0.4m, 1, 0, 0.6m);

    public static TheoryData<string> Skills => [.. ShippedBank.Exercises.Select(exercise => exercise.Skill).Distinct()];

    [Theory]
    [MemberData(nameof(Skills))]
    public void The_grader_judges_every_answer_as_it_was_made_and_names_the_misconception_acted_out(string skill)
    {
        var exercises = ShippedBank.Exercises.Where(exercise => exercise.Skill == skill).ToList();
        var roster = new Roster(
            "Invented",
            [.. Enumerable.Range(0, Students).Select(number => new Student($"s-{number:00}", $"Student {number}"))]
        );
        var dealing = Dealer.Deal("bank", "Bank", exercises, Marking, roster, 7);
        Assert.True(dealing.Class is not null, string.Join("\n", dealing.Problems));

        var layout = dealing.Class.LayOut();
        var made = dealing
            .Class.Students.Select((seat, number) => layout.Exercises.SelectMany(exercise => Answers(exercise, seat, number)).ToList())
            .ToList();
        var returned = dealing
            .Class.Students.Zip(made, (seat, answers) =>
                Read(seat, WorkbookFiller.Fill(DealtWorkbookWriter.Write(dealing.Class, seat), Returning.Edits(layout, answers)))
            )
            .ToList();
        var grades = ClassGrader.Grade(dealing.Class, returned);

        var pairs = grades
            .Students.Zip(made, (student, answers) => student.Answers.Zip(answers, (grade, answer) => (Grade: grade, Answer: answer)))
            .SelectMany(pair => pair)
            .ToList();
        Assert.Equal(Students * exercises.Sum(exercise => exercise.Parts.Count), pairs.Count);
        EveryMisconceptionWasActedOut(exercises, pairs.Select(pair => pair.Answer));

        var acted = pairs.Where(pair => pair.Answer.Misconception is not null).ToList();
        var named = acted.Count(pair => pair.Grade.Misconception?.Id == pair.Answer.Misconception);
        Assert.True(named >= 0.99 * acted.Count, $"{named} of {acted.Count} were named.\n{Differences(acted)}");
        Assert.DoesNotContain(pairs, pair =>
            pair.Answer.Truth is Outcome.Sound or Outcome.ValueOnly && pair.Grade.Misconception is not null
        );
        Assert.True(pairs.TrueForAll(pair => IsAsMade(pair.Grade, pair.Answer)), Differences(pairs));
    }

    /// <summary>One part of the exercise takes a wrong turn, which one changes with the student; every fourth types its result.</summary>
    private static List<RehearsedAnswer> Answers(ExerciseLayout layout, DealtStudent seat, int number)
    {
        var exercise = layout.Exercise;
        var turns = exercise.Parts.SelectMany(part => part.Misconceptions.Select((_, pick) => (Part: part, Pick: pick))).ToList();
        var (wrong, misconception) = turns[number % turns.Count];
        var round = number / turns.Count;
        var sheet = new AnswerSheet(layout, seat);
        var turned = false;
        return
        [
            .. exercise.Parts.Select(part =>
            {
                if (part == wrong)
                {
                    turned = true;
                    return sheet.Answer(part, (number + round) % 4 == 3 ? AnswerWay.WrongTurnTyped : AnswerWay.WrongTurn, misconception);
                }
                // The wrong turn must stand on right ground, so what comes before it is right; what comes after may be anything.
                return sheet.Answer(part, turned ? Otherwise[(number + round) % Otherwise.Length] : Otherwise[round % 2], number);
            }),
        ];
    }

    private static void EveryMisconceptionWasActedOut(List<Exercise> exercises, IEnumerable<RehearsedAnswer> answers)
    {
        var acted = answers
            .Where(answer => answer.Misconception is not null)
            .Select(answer => (answer.Exercise, answer.Part, answer.Misconception))
            .ToHashSet();
        Assert.All(
            exercises.SelectMany(exercise =>
                exercise.Parts.SelectMany(part =>
                    part.Misconceptions.Select(misconception => (exercise.Id, part.Id, (string?)misconception.Id))
                )
            ),
            misconception => Assert.Contains(misconception, acted)
        );
    }

    private static ReturnedFile Read(DealtStudent seat, byte[] workbook)
    {
        var reading = ReturnedWorkbookReader.Read(workbook);
        return new($"{seat.Who.Id}.xlsx", reading.Workbook, reading.Refusal);
    }

    private static bool IsAsMade(AnswerGrade grade, RehearsedAnswer answer) =>
        grade.Outcome == answer.Truth && grade.Misconception?.Id == answer.Misconception;

    private static string Differences(IEnumerable<(AnswerGrade Grade, RehearsedAnswer Answer)> pairs) =>
        string.Join(
            "\n",
            pairs
                .Where(pair => !IsAsMade(pair.Grade, pair.Answer))
                .Select(pair =>
                    $"{pair.Answer.Exercise}/{pair.Answer.Part}: {pair.Answer.Way} {pair.Answer.Content} is {pair.Answer.Truth} {pair.Answer.Misconception}, and was judged {pair.Grade.Outcome} {pair.Grade.Misconception?.Id}, {pair.Grade.Value} for {pair.Grade.Expected}"
                )
                .Take(20)
        );
}
