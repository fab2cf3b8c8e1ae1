using ClassKit.Exercises.Authoring;
using ClassKit.Exercises.Cohorts;
using ClassKit.Exercises.Dealing;
using ClassKit.Exercises.Identity;
using ClassKit.Exercises.Marking;
using ClassKit.Exercises.Tests.Variants;
using ClassKit.Exercises.Variants;

namespace ClassKit.Exercises.Tests.Dealing;

public sealed class DealerTests
{
    private static readonly MarkingScheme Marking = new("m", "Marks", 0.5m, 1, 0, 0.6m);

    private static Roster Class(int students) =>
        new("Class", [.. Enumerable.Range(1, students).Select(number => new Student($"student-{number}", $"Student {number}"))]);

    private static DealResult Deal(int students, ulong seed = 5, Exercise? exercise = null) =>
        Dealer.Deal("lesson", "Lesson", [exercise ?? WaterExercise.Make()], Marking, Class(students), seed);

    private static IEnumerable<string> Variants(DealtClass dealt) =>
        dealt.Students.Select(student => VariantKey.Of(dealt.Exercises[0], student.GivensOf("hydration")));

    [Fact]
    public void No_two_students_share_a_variant_while_there_are_enough()
    {
        // 9 flours × 4 hydrations, all with at least 300 g of water.
        var result = Deal(36);

        Assert.Equal(36, Variants(result.Class!).Distinct().Count());
        Assert.Empty(result.Shared);
    }

    [Fact]
    public void A_class_larger_than_the_exercise_shares_variants_and_is_told()
    {
        var result = Deal(40);

        Assert.Equal(40, result.Class!.Students.Count);
        Assert.Equal(36, Variants(result.Class).Distinct().Count());
        Assert.Equal(4, Assert.Single(result.Shared).Students);
    }

    [Fact]
    public void Variants_that_must_be_shared_are_shared_alike()
    {
        // 36 variants for 90 students: each is dealt twice or three times.
        Assert.All(Variants(Deal(90).Class!).GroupBy(variant => variant), shared => Assert.InRange(shared.Count(), 2, 3));
    }

    [Fact]
    public void The_seed_decides_everything()
    {
        Assert.Equal(Variants(Deal(20).Class!), Variants(Deal(20).Class!));
        Assert.NotEqual(Variants(Deal(20).Class!), Variants(Deal(20, seed: 6).Class!));
    }

    [Fact]
    public void Another_exercise_in_the_set_changes_nobodys_numbers()
    {
        var alone = Deal(10).Class!;
        var both = Dealer
            .Deal("lesson", "Lesson", [WaterExercise.Make() with { Id = "other" }, WaterExercise.Make()], Marking, Class(10), 5)
            .Class!;

        Assert.Equal(
            alone.Students.Select(student => student.GivensOf("hydration")),
            both.Students.Select(student => student.GivensOf("hydration"))
        );
    }

    private static DealResult Practise(int students, NumbersToAvoid avoid, Exercise? exercise = null) =>
        Dealer.Deal("lesson", "Lesson", [exercise ?? WaterExercise.Make()], Marking, Class(students), 5, new(DealPurpose.Practice, avoid));

    [Fact]
    public void Practice_with_the_seed_of_graded_work_has_other_numbers()
    {
        var pairs = Variants(Deal(10).Class!).Zip(Variants(Practise(10, NumbersToAvoid.None).Class!)).ToList();

        // One of 36 variants may come twice by chance; ten streams that are the same would agree in all.
        Assert.InRange(pairs.Count(pair => pair.First == pair.Second), 0, 3);
    }

    [Fact]
    public void Practice_keeps_away_from_every_number_of_a_deal_that_is_to_be_graded()
    {
        var graded = Deal(30).Class!;

        Assert.Empty(Variants(graded).Intersect(Variants(Practise(6, NumbersToAvoid.OfAnyone(graded)).Class!)));
    }

    [Fact]
    public void Practice_after_grading_never_repeats_a_students_own_numbers_even_where_all_variants_were_dealt()
    {
        var graded = Deal(36).Class!;
        var again = Practise(36, NumbersToAvoid.OfEach(graded)).Class!;

        Assert.DoesNotContain(Variants(graded).Zip(Variants(again)), pair => pair.First == pair.Second);
    }

    [Fact]
    public void Where_every_variant_was_dealt_before_practice_says_so()
    {
        var problem = Assert.Single(Practise(1, NumbersToAvoid.OfAnyone(Deal(36).Class!)).Problems);

        Assert.Equal("hydration", problem.Exercise.Id);
        Assert.Null(problem.Because);
    }

    [Fact]
    public void An_exercise_without_a_variant_is_a_problem_with_its_reason()
    {
        var result = Deal(3, exercise: WaterExercise.Make("=water>5000"));

        Assert.Null(result.Class);
        Assert.Equal("=water>5000", Assert.Single(result.Problems).Because?.Culprit.Constraint);
    }
}
