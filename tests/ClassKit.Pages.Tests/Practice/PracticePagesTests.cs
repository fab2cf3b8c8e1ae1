using AngleSharp.Dom;
using ClassKit.Exercises.Authoring;
using ClassKit.Exercises.Dealing;
using ClassKit.Exercises.Texts;
using ClassKit.Pages.Tests.Samples;

namespace ClassKit.Pages.Tests.Practice;

public sealed class PracticePagesTests
{
    private static readonly DealtStudent Student = SampleClass.Dealt.Students[2];
    private static readonly IDocument Sheet = Html.Parse(HtmlPages.Sheet(SampleClass.Dealt, Student));
    private static readonly IDocument SelfCheck = Html.Parse(HtmlPages.SelfCheck(SampleClass.Dealt, Student));

    private static IEnumerable<Part> Parts => SampleExercises.All.SelectMany(exercise => exercise.Parts);

    [Fact]
    public void A_sheet_asks_every_part_with_the_students_numbers_and_room_to_answer()
    {
        Assert.Equal(Parts.Count(), Sheet.QuerySelectorAll(".answer-line").Length);
        Assert.All(Parts, part => Assert.Contains(part.Ask, Sheet.Body!.Text(), StringComparison.Ordinal));
        foreach (
            var given in SampleExercises.All.SelectMany(exercise => exercise.Givens.Select(given => (Exercise: exercise, Given: given)))
        )
        {
            var value = GivenText.Of(given.Given, Student.GivensOf(given.Exercise.Id)[given.Given.Id]).Replace('\u00A0', ' ');
            Assert.Contains(
                value,
                Sheet.QuerySelector($"#exercise-{given.Exercise.Id}")!.Closest("section")!.Text(),
                StringComparison.Ordinal
            );
        }
    }

    [Fact]
    public void A_sheet_holds_no_answer_no_hint_and_no_wrong_turn()
    {
        var html = Sheet.DocumentElement.OuterHtml;
        Assert.All(SampleExercises.All, exercise =>
            Assert.All(exercise.Parts, part =>
                Assert.DoesNotContain(ResultText.Of(part, Student.AnswersOf(exercise.Id)[part.Id]), html, StringComparison.Ordinal)
            )
        );
        Assert.All(Parts.SelectMany(part => part.Misconceptions), misconception =>
            Assert.DoesNotContain(misconception.Words, html, StringComparison.Ordinal)
        );
        Assert.All(SampleExercises.All.SelectMany(exercise => exercise.Hints), hint =>
            Assert.DoesNotContain(hint, html, StringComparison.Ordinal)
        );
    }

    [Fact]
    public void On_a_self_checking_page_every_answer_has_a_field_with_a_name_of_its_own()
    {
        var names = SelfCheck
            .QuerySelectorAll("input")
            .Select(input => SelfCheck.QuerySelector($"label[for='{input.Id}']")!.Text())
            .ToList();
        Assert.Equal(
            ["Your answer to 1a", "Your answer to 1b", "Your answer to 1c", "Your answer to 2a", "Your answer to 2b", "Your answer to 3a"],
            names
        );
    }

    [Fact]
    public void Without_its_script_a_self_checking_page_is_a_sheet_whose_hints_and_workings_open()
    {
        Assert.Equal(Parts.Count(), SelfCheck.QuerySelectorAll(".answer-line").Length);
        Assert.Equal(
            SampleExercises.Hydration.Hints,
            SelfCheck.QuerySelectorAll("details.hint:not([hidden]) p").Select(hint => hint.Text())
        );
        Assert.Equal(Parts.Count(), SelfCheck.QuerySelectorAll("details.worked-out:not([hidden]) .solution").Length);
        // What cannot work is not offered.
        Assert.All(SelfCheck.QuerySelectorAll("button"), button => Assert.True(button.HasAttribute("hidden")));
    }

    [Fact]
    public void A_self_checking_page_prints_its_answers_on_a_sheet_of_their_own()
    {
        var answers = SelfCheck.QuerySelector("#answers")!.Closest("section")!;
        Assert.Contains("new-sheet", answers.ClassList);
        Assert.Contains("only-print", answers.ClassList);
        var dough = Student.AnswersOf("hydration")["dough"];
        Assert.Contains(
            ResultText.Of(SampleExercises.Hydration.Parts[1], dough).Replace('\u00A0', ' '),
            answers.Text(),
            StringComparison.Ordinal
        );
    }
}
