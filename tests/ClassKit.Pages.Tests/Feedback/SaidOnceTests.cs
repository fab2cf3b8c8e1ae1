using AngleSharp.Dom;
using ClassKit.CellFormulas.Formulas;
using ClassKit.CellFormulas.Values;
using ClassKit.Exercises.Authoring;
using ClassKit.Exercises.Dealing;
using ClassKit.Exercises.Variants;
using ClassKit.Grading.Findings;
using ClassKit.Grading.Results;
using ClassKit.Pages.Tests.Samples;

namespace ClassKit.Pages.Tests.Feedback;

/// <summary>
/// A sheet that says the same line under every card says nothing: what lies behind several stands first, and what can be said of all of
/// them once.
/// </summary>
public sealed class SaidOnceTests
{
    private static readonly Exercise Weighing = new(
        "e",
        "E",
        "weighing",
        ExerciseLevel.Standard,
        5,
        "arithmetic",
        "Multiply it.",
        [new("mass", "Mass", "g", 100, 900, 1)],
        [],
        [
            .. new[] { "double", "triple", "half" }.Select(part => new Part(
                part,
                $"How much is {part}?",
                CellFormula.Of("=mass*2"),
                "g",
                Tolerance.Absolute(0.5),
                2,
                true,
                []
            )),
        ],
        []
    );

    [Fact]
    public void What_lies_behind_several_comes_first_and_no_card_says_more_of_them()
    {
        var first = PutRight(400 * 1.37, 600 * 1.37, 100 * 1.37);

        Assert.Equal("One thing behind several:", first.QuerySelector("h2 + p strong")!.Text());
        Assert.Contains("all 3 parts are each 1.37 times what is right", first.Text(), StringComparison.Ordinal);
        Assert.Empty(first.QuerySelectorAll("dl + p"));
        Assert.DoesNotContain("number by number", first.Text(), StringComparison.Ordinal);
    }

    [Fact]
    public void What_nobody_can_name_is_answered_once_for_all_of_its_kind()
    {
        var first = PutRight(401.5, 777, 12);

        Assert.Empty(first.QuerySelectorAll("dl + p"));
        Assert.Contains(
            "For all 3 parts, we could not see what happened: lay your steps beside the right way, number by number",
            first.Text(),
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void One_alone_says_it_on_its_card() =>
        Assert.Contains("we could not see how it came about", PutRight(401.5).QuerySelector("dl + p")!.Text(), StringComparison.Ordinal);

    private static IElement PutRight(params double[] entered)
    {
        var who = SampleClass.Dealt.Students[0].Who;
        var variant = new Variant(
            Weighing,
            new Dictionary<string, decimal> { ["mass"] = 200 },
            new Dictionary<string, double>
            {
                ["double"] = 400,
                ["triple"] = 600,
                ["half"] = 100,
            }
        );
        var dealt = SampleClass.Dealt with { Exercises = [Weighing], Students = [new DealtStudent(who, "workbooks/s01.xlsx", [variant])] };
        IReadOnlyList<AnswerGrade> answers =
        [
            .. Weighing
                .Parts.Take(entered.Length)
                .Select(
                    (part, at) =>
                        new AnswerGrade(
                            Weighing,
                            part,
                            Outcome.Incorrect,
                            0,
                            2,
                            CellValue.FromNumber(entered[at]),
                            variant.Answers[part.Id],
                            null,
                            [new AnswerFinding.NotRight()],
                            new Dictionary<string, double>()
                        )
                ),
        ];
        return Html.Parse(HtmlPages.Feedback(new(who, GradeStatus.Graded, "s01.xlsx", answers, []), dealt)).QuerySelector(".put-right")!;
    }
}
