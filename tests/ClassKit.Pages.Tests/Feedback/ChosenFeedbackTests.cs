using AngleSharp.Dom;
using ClassKit.CellFormulas.Formulas;
using ClassKit.CellFormulas.Values;
using ClassKit.Exercises.Authoring;
using ClassKit.Exercises.Dealing;
using ClassKit.Exercises.Lettering;
using ClassKit.Exercises.Variants;
using ClassKit.Grading.Findings;
using ClassKit.Grading.Results;
using ClassKit.Pages.Tests.Samples;

namespace ClassKit.Pages.Tests.Feedback;

/// <summary>Feedback on what was chosen: what was looked at stands beside it, and one step in two places is said in words.</summary>
public sealed class ChosenFeedbackTests
{
    private static readonly OptionList Steps = new(
        "steps",
        ChoiceKind.Order,
        [new("ferment", "Let it ferment."), new("divide", "Scale the pieces."), new("mould", "Mould the loaves.")]
    );

    private static readonly OptionList Stages = new(
        "stage",
        ChoiceKind.Choose,
        [new("under_proofed", "It needs longer."), new("just_proofed", "Bake it now."), new("over_proofed", "It has gone too far.")]
    );

    private static readonly Exercise Order = Exercise(
        "order",
        Chosen("first", "=1", new(Steps, "Gas first.")),
        Chosen("second", "=2", new(Steps, "Then the scale.")),
        Chosen("third", "=3", new(Steps, "Shape last."))
    );

    private static readonly Exercise Tub = Exercise(
        "tub",
        Chosen(
            "stage",
            "=3",
            new(Stages, "Its walls have gone.")
            {
                Drawing = new(
                    DrawnThing.CutDough,
                    [
                        new("under_proofed", "Few small bubbles."),
                        new("just_proofed", "Many bubbles under a dome."),
                        new("over_proofed", "Large bubbles under a sunken top."),
                    ]
                ),
            }
        )
    );

    private static Part Chosen(string id, string key, Choice choice) =>
        new(id, $"Which is {id}?", CellFormula.Of(key), "", Tolerance.Absolute(0), 1, false, []) { Choice = choice };

    private static Exercise Exercise(string id, params Part[] parts) =>
        new(
            id,
            id,
            "yeast",
            ExerciseLevel.Guided,
            5,
            "common practice, no source",
            "There are {tubs}.",
            [new("tubs", "Tubs", "", 3, 9, 1)],
            [],
            parts,
            []
        );

    private static Variant Deal(Exercise exercise) =>
        new(
            exercise,
            new Dictionary<string, decimal> { ["tubs"] = 5 },
            exercise.Parts.ToDictionary(
                part => part.Id,
                part => double.Parse(part.Key.Text[1..], System.Globalization.CultureInfo.InvariantCulture)
            )
        );

    private static AnswerGrade Answer(Exercise exercise, int part, int chosen)
    {
        var asked = exercise.Parts[part];
        var expected = Deal(exercise).Answers[asked.Id];
        var isRight = expected == chosen;
        return new(
            exercise,
            asked,
            isRight ? Outcome.ValueOnly : Outcome.Incorrect,
            isRight ? 1 : 0,
            1,
            CellValue.FromText("B"),
            expected,
            null,
            [isRight ? new AnswerFinding.RightTyped() : new AnswerFinding.NotRight()],
            new Dictionary<string, double>()
        )
        {
            Chosen = asked.Choice!.From.Options[chosen - 1],
        };
    }

    private static IDocument Page(params AnswerGrade[] answers)
    {
        var who = SampleClass.Dealt.Students[0].Who;
        var exercise = answers[0].Exercise;
        var dealt = SampleClass.Dealt with
        {
            Exercises = [exercise],
            Students = [new DealtStudent(who, "workbooks/s01.xlsx", [Deal(exercise)])],
        };
        return Html.Parse(HtmlPages.Feedback(new(who, GradeStatus.Graded, "s01.xlsx", answers, []), dealt));
    }

    [Fact]
    public void One_step_in_two_places_is_said_where_it_is_wrong_on_the_screen_and_in_print()
    {
        var page = Page(Answer(Order, 0, 1), Answer(Order, 1, 1), Answer(Order, 2, 3));
        const string said = "You put the same step in part a too; every step has one place.";

        Assert.Contains(said, page.QuerySelector("#part-order-second")!.Closest("section")!.Text(), StringComparison.Ordinal);
        Assert.Contains(said, page.QuerySelector(".put-right")!.Text(), StringComparison.Ordinal);
        Assert.DoesNotContain("same step", page.QuerySelector("#part-order-first")!.Closest("section")!.Text(), StringComparison.Ordinal);
        Assert.DoesNotContain("same step", page.QuerySelector("#part-order-third")!.Closest("section")!.Text(), StringComparison.Ordinal);
    }

    [Fact]
    public void What_is_said_of_every_choice_is_said_once_and_a_choice_is_called_one()
    {
        var first = Page(Answer(Order, 0, 2), Answer(Order, 1, 1), Answer(Order, 2, 3)).QuerySelector(".put-right")!;

        Assert.Equal(["You chose", "Right", "You chose", "Right"], first.QuerySelectorAll("dt").Select(label => label.Text()));
        Assert.DoesNotContain("says why", first.Text(), StringComparison.Ordinal);
        Assert.Contains("The reasons for parts 1a and 1b stand with the worked solutions.", first.Text(), StringComparison.Ordinal);
        Assert.Contains(
            "its worked solution says why",
            Page(Answer(Order, 0, 1), Answer(Order, 1, 2), Answer(Order, 2, 1)).QuerySelector(".put-right")!.Text(),
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void Three_places_are_all_named() =>
        Assert.Contains(
            "You put the same step in parts a and c too",
            Page(Answer(Order, 0, 3), Answer(Order, 1, 3), Answer(Order, 2, 3))
                .QuerySelector("#part-order-second")!
                .Closest("section")!
                .Text(),
            StringComparison.Ordinal
        );

    [Fact]
    public void Steps_that_stand_once_are_not_said_to_be_repeated() =>
        Assert.DoesNotContain(
            "same step",
            Page(Answer(Order, 0, 2), Answer(Order, 1, 1), Answer(Order, 2, 3)).QuerySelector("main")!.Text(),
            StringComparison.Ordinal
        );

    /// <summary>
    /// A student reads options behind letters in an order of their own: what was chosen and what is right stand with both, in front, on the
    /// back and on the screen.
    /// </summary>
    [Fact]
    public void What_was_chosen_and_what_is_right_stand_behind_the_letters_that_the_student_read()
    {
        var page = Page(Answer(Tub, 0, 1));
        var read = LetteredOptions.Of(Tub, Stages, Deal(Tub).Givens);
        string Lettered(int option) =>
            $"{read.Letters[read.InOrder.Index().Single(each => each.Item.Id == Stages.Options[option].Id).Index]}: {Stages.Options[option].Words}";

        Assert.All([".put-right .answers", "details.exercise"], (string where) =>
            Assert.All([0, 2], (int option) =>
                Assert.Contains(Lettered(option), page.QuerySelector(where)!.Text(), StringComparison.Ordinal)
            )
        );
        Assert.Contains(Lettered(2), page.QuerySelector(".missed")!.Text(), StringComparison.Ordinal);
        Assert.Equal(3, Enumerable.Range(0, 3).Select(Lettered).Select(words => words[0]).Distinct().Count());
    }

    [Fact]
    public void The_drawing_that_was_judged_stands_with_the_answer_and_on_the_back_of_the_sheet_if_it_was_missed()
    {
        var missed = Page(Answer(Tub, 0, 1));
        Assert.Equal("Large bubbles under a sunken top.", missed.QuerySelector("details.exercise figure.seen desc")!.Text());
        Assert.Equal("Large bubbles under a sunken top.", missed.QuerySelector(".missed figure.seen desc")!.Text());
        Assert.Equal(
            missed.QuerySelector("details.exercise figure.seen svg")!.OuterHtml,
            missed.QuerySelector(".missed figure.seen svg")!.OuterHtml
        );

        var right = Page(Answer(Tub, 0, 3));
        Assert.NotNull(right.QuerySelector("details.exercise figure.seen svg"));
        Assert.Null(right.QuerySelector(".missed figure.seen"));
    }
}
