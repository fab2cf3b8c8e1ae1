using ClassKit.CellFormulas.Formulas;
using ClassKit.Exercises.Authoring;
using ClassKit.Exercises.Texts;
using ClassKit.Exercises.Variants;
using ClassKit.Pages.Tests.Samples;

namespace ClassKit.Pages.Tests.Keys;

public sealed class AnswerKeyTests
{
    private static readonly AngleSharp.Dom.IDocument Page = Html.Parse(string.Concat(HtmlPages.AnswerKey(SampleClass.Dealt)));

    [Fact]
    public void Every_exercise_has_its_method_and_its_wrong_turns_once()
    {
        foreach (var exercise in SampleExercises.All)
        {
            var section = Page.QuerySelector($"#exercise-{exercise.Id}")!.Closest("section")!;
            Assert.Equal(exercise.Parts.Count, section.QuerySelectorAll("section.part").Length);
            Assert.Equal(
                exercise.Parts.SelectMany(part => part.Misconceptions).Select(misconception => misconception.Words),
                section.QuerySelectorAll(".wrong-turns dd").Select(words => words.Text())
            );
        }
    }

    [Fact]
    public void Every_student_has_a_row_of_numbers_and_one_of_working()
    {
        foreach (var exercise in SampleExercises.All)
        {
            var section = Page.QuerySelector($"#exercise-{exercise.Id}")!.Closest("section")!;
            foreach (var table in section.QuerySelectorAll("table"))
                Assert.Equal(
                    SampleClass.Dealt.Students.Select(student => student.Who.Name),
                    table.QuerySelectorAll("tbody th").Select(name => name.Text())
                );
            Assert.Equal(SampleClass.Dealt.Students.Count * exercise.Parts.Count, section.QuerySelectorAll("table.worked math").Length);
        }
    }

    [Fact]
    public void One_grid_holds_every_students_right_answer_to_every_part()
    {
        var grid = Page.QuerySelector("table.answer-grid")!;
        var parts = SampleExercises.All.Sum(exercise => exercise.Parts.Count);

        Assert.Equal(
            SampleClass.Dealt.Students.Select(student => student.Who.Name),
            grid.QuerySelectorAll("tbody th").Select(name => name.Text())
        );
        Assert.All(grid.QuerySelectorAll("tbody tr"), row => Assert.Equal(parts, row.QuerySelectorAll("td").Length));
        Assert.Equal(
            ResultText.Number(
                SampleExercises.All[0].Parts[0],
                SampleClass.Dealt.Students[0].AnswersOf(SampleExercises.All[0].Id)[SampleExercises.All[0].Parts[0].Id]
            ),
            grid.QuerySelector("tbody td")!.Text()
        );
    }

    [Fact]
    public void Given_values_that_are_the_same_for_all_are_told_once() =>
        Assert.Contains("The same for all: Salt 2 %.", Page.QuerySelector("main")!.Text(), StringComparison.Ordinal);

    /// <summary>Five questions that share a list have it above them once, and no heading of one word five times.</summary>
    [Fact]
    public void An_order_has_its_list_once_and_its_reasons_without_a_heading_each()
    {
        OptionList steps = new("steps", ChoiceKind.Order, [new("mix", "Mix it."), new("proof", "Let it proof."), new("bake", "Bake it.")]);
        var exercise = SampleExercises.Hydration with
        {
            Id = "order",
            Parts =
            [
                .. steps.Options.Select(
                    (step, at) =>
                        new Part(
                            step.Id,
                            $"Which is number {at + 1}?",
                            CellFormula.Of($"={at + 1}"),
                            "",
                            Tolerance.Absolute(0),
                            1,
                            false,
                            []
                        )
                        {
                            Choice = new(steps, $"Because of {step.Id}."),
                        }
                ),
            ],
        };
        var student = SampleClass.Dealt.Students[0];
        var variant = new Variant(
            exercise,
            student.GivensOf(SampleExercises.Hydration.Id),
            steps.Options.Select((step, at) => (step.Id, at + 1.0)).ToDictionary()
        );
        var key = Html.Parse(
            string.Concat(
                HtmlPages.AnswerKey(SampleClass.Dealt with { Exercises = [exercise], Students = [student with { Variants = [variant] }] })
            )
        );

        var section = key.QuerySelector("#exercise-order")!.Closest("section")!;
        Assert.Equal(3, section.QuerySelectorAll("ul.options li").Length);
        Assert.Empty(section.QuerySelectorAll("section.part h4"));
        Assert.Equal(
            ["Because of mix.", "Because of proof.", "Because of bake."],
            section.QuerySelectorAll("section.part .solution li").Select(why => why.Text().Trim())
        );
    }
}
