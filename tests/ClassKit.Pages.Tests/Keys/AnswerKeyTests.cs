using ClassKit.Exercises.Texts;
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
}
