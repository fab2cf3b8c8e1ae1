using ClassKit.CellFormulas.Formulas;
using ClassKit.Exercises.Authoring;
using ClassKit.Exercises.Cohorts;
using ClassKit.Exercises.Dealing;
using ClassKit.Grading.Findings;
using ClassKit.Grading.Results;
using ClassKit.Grading.Summaries;

namespace ClassKit.Grading.Tests.Integrity;

/// <summary>Facts about pairs of students: shown beyond chance, and silent where chance or teaching explains as much.</summary>
public sealed class IntegrityFactsTests
{
    private const int Students = 20;

    /// <summary>Six sums of two givens each, so that every part is a slip of its own.</summary>
    private static readonly Exercise Sums = new(
        "sums",
        "Sums",
        "adding",
        ExerciseLevel.Standard,
        5,
        "arithmetic",
        "Add.",
        [
            .. Enumerable
                .Range(0, 6)
                .SelectMany(part =>
                    new[] { new Given($"flour_{part}", "Flour", "g", 100, 900, 1), new Given($"water_{part}", "Water", "g", 100, 900, 1) }
                ),
        ],
        [],
        [
            .. Enumerable
                .Range(0, 6)
                .Select(part => new Part(
                    $"dough_{part}",
                    "How much dough?",
                    CellFormula.Of($"=flour_{part}+water_{part}"),
                    "g",
                    Tolerance.Absolute(0.5),
                    1,
                    true,
                    [new("difference", CellFormula.Of($"=flour_{part}-water_{part}"), "Add them.")]
                )),
        ],
        []
    );

    private static readonly DealtClass Dealt = Dealer
        .Deal(
            "sums",
            "Sums",
            [Sums],
            new("marks", "Marks", 0.4m, 1, 0, 0.6m),
            new("Class", [.. Enumerable.Range(0, Students).Select(at => new Student($"student-{at:00}", $"Student {at:00}"))]),
            3
        )
        .Class!;

    /// <summary>The class, with what some students wrote in place of right formulas.</summary>
    private static ClassGrades Graded(Dictionary<int, object[]> answers, Func<int, string?>? savedBy = null) =>
        ClassGrader.Grade(
            Dealt,
            Dealt.Students.Select(
                (student, at) =>
                {
                    var book = new ReturnedBook(student);
                    for (var part = 0; part < 6; part++)
                        book.Answer($"dough_{part}", answers.TryGetValue(at, out var own) ? own[part] : $"=flour_{part}+water_{part}");
                    return book.As($"{student.Who.Id}.xlsx") with { SavedBy = savedBy?.Invoke(at) };
                }
            )
        );

    private static List<string> Flagged(ClassGrades grades, string code) =>
        [.. grades.Students.Where(student => student.Flags.Any(flag => flag.Code == code)).Select(student => student.Who.Id)];

    private static object[] ExpectedOf(int student, int wrong) =>
        [
            .. Enumerable
                .Range(0, 6)
                .Select(part =>
                    part < wrong
                        ? (object)Dealt.Students[student].Variants.SelectMany(variant => variant.Answers.Values).ElementAt(part)
                        : $"=flour_{part}+water_{part}"
                ),
        ];

    [Fact]
    public void Nothing_is_said_of_a_class_that_made_no_mistakes()
    {
        Assert.All(Graded(new Dictionary<int, object[]>()).Students, student => Assert.Empty(student.Flags));
    }

    [Fact]
    public void Numbers_that_fit_another_students_sheet_are_a_fact_once_chance_does_not_explain_them()
    {
        // 20 students with 19 classmates each: 20 × 19 × (1/19)⁴ = 0.0029 such pairs by chance, 1 in 343 classes.
        var flag = Assert.Single(Graded(new Dictionary<int, object[]> { [4] = ExpectedOf(9, 4) }).Students[4].Flags);

        var fits = Assert.IsType<Flag.FitsAnotherVariant>(flag);
        Assert.Equal(Dealt.Students[9].Who, fits.Other);
        Assert.Equal([("sums", "dough_0"), ("sums", "dough_1"), ("sums", "dough_2"), ("sums", "dough_3")], fits.Parts);
        Assert.Equal(343, 1 / fits.Expected, 0.5);
    }

    /// <summary>
    /// A number that is right for a neighbour may by coincidence be what a wrong turn gives here. It says nothing of what the class
    /// misunderstood.
    /// </summary>
    [Fact]
    public void A_number_that_came_from_another_sheet_is_counted_as_nobodys_wrong_turn()
    {
        var grades = Graded(new Dictionary<int, object[]> { [4] = ExpectedOf(9, 4) });
        ClassGrades Coinciding(IReadOnlyList<Flag> flags) =>
            grades with
            {
                Students =
                [
                    .. grades.Students.Select(
                        (student, at) =>
                            at != 4
                                ? student
                                : student with
                                {
                                    Flags = flags,
                                    Answers =
                                    [
                                        .. student.Answers.Select(
                                            (answer, part) =>
                                                part == 0
                                                    ? answer with
                                                    {
                                                        Outcome = Outcome.Misconception,
                                                        Findings = [new AnswerFinding.WrongTurn(answer.Part.Misconceptions[0])],
                                                    }
                                                    : answer
                                        ),
                                    ],
                                }
                    ),
                ],
            };

        Assert.Equal(1, Assert.Single(ClassSummarizer.Summarize(Coinciding([])).Parts[0].Misconceptions).Students);
        Assert.Empty(ClassSummarizer.Summarize(Coinciding(grades.Students[4].Flags)).Parts[0].Misconceptions);
    }

    [Theory]
    [InlineData(1)]
    // 20 × 19 × (1/19)³ = 0.055: more often than in one class of twenty.
    [InlineData(3)]
    public void Few_numbers_that_fit_another_sheet_are_no_fact(int numbers)
    {
        Assert.Empty(Flagged(Graded(new Dictionary<int, object[]> { [4] = ExpectedOf(9, numbers) }), FlagCodes.FitsAnotherVariant));
    }

    [Fact]
    public void The_same_odd_formulas_in_two_workbooks_are_a_fact_for_both()
    {
        object[] odd = [.. Enumerable.Range(0, 6).Select(part => $"=flour_{part}*2-water_{part}/3")];
        var answers = new Dictionary<int, object[]> { [2] = odd, [11] = odd };
        for (var other = 12; other < 17; other++)
            answers[other] = [.. Enumerable.Range(0, 6).Select(part => $"=flour_{part}*{other}-water_{part}")];

        Assert.Equal(["student-02", "student-11"], Flagged(Graded(answers), FlagCodes.SharedMistakes));
    }

    [Fact]
    public void A_mistake_that_much_of_the_class_makes_is_no_fact_about_two()
    {
        object[] common = [.. Enumerable.Range(0, 6).Select(part => $"=flour_{part}+water_{part}*2")];

        Assert.Empty(Flagged(Graded(Enumerable.Range(0, 10).ToDictionary(at => at, _ => common)), FlagCodes.SharedMistakes));
    }

    [Fact]
    public void A_known_wrong_method_is_what_a_class_shares_by_being_taught_together()
    {
        object[] known = [.. Enumerable.Range(0, 6).Select(part => $"=flour_{part}-water_{part}")];

        Assert.Empty(Flagged(Graded(new Dictionary<int, object[]> { [2] = known, [11] = known }), FlagCodes.SharedMistakes));
    }

    [Fact]
    public void Two_workbooks_saved_by_one_person_are_a_fact_that_does_not_name_the_person()
    {
        var grades = Graded(new Dictionary<int, object[]>(), at => at is 3 or 8 ? "Kitchen Desk" : $"User {at}");

        Assert.Equal(["student-03", "student-08"], Flagged(grades, FlagCodes.SharedAuthor));
        Assert.Equal([Dealt.Students[8].Who], Assert.IsType<Flag.SharedAuthor>(grades.Students[3].Flags[0]).Others);
    }

    [Fact]
    public void A_name_that_the_whole_lab_shares_says_nothing()
    {
        Assert.Empty(Flagged(Graded(new Dictionary<int, object[]>(), _ => "Lab"), FlagCodes.SharedAuthor));
    }
}
