using ClassKit.CellFormulas.Values;
using ClassKit.Grading.Findings;
using ClassKit.Grading.Intake;
using ClassKit.Grading.OnPaper;
using ClassKit.Grading.Results;
using static ClassKit.Grading.Tests.DealtForTests;

namespace ClassKit.Grading.Tests;

/// <summary>
/// Answers on paper are judged like typed ones; working that shows the method earns what a formula does, under the marking scheme's 40 %
/// for accuracy.
/// </summary>
public sealed class OnPaperTests
{
    private const string Place = "paper.xlsx row 7";

    [Fact]
    public void Without_a_tick_paper_is_judged_as_the_same_numbers_typed_into_the_workbook()
    {
        (string, double)[][] papers =
        [
            [("sum", 138), ("temperature", 87), ("ice", 0.386473), ("ice_share", 2.512)],
            [("sum", 148), ("temperature", 77), ("ice", 0.87)],
            [("sum", 138), ("temperature", 12)],
            [("temperature", 78), ("ice", 100)],
        ];

        Assert.All(papers, paper =>
        {
            var book = paper.Aggregate(new ReturnedBook(Ada), (book, answer) => book.Answer(answer.Item1, answer.Item2));
            var typed = Grade(book).Answers;
            var written = Graded([.. paper.Select(answer => Of(answer.Item1, answer.Item2))]).Answers;

            Assert.Equal(
                typed.Select(answer => (answer.Part.Id, answer.Outcome, answer.Points, answer.OutOf)),
                written.Select(answer => (answer.Part.Id, answer.Outcome, answer.Points, answer.OutOf))
            );
            Assert.All(written, answer => Assert.Equal(PaperWorking.NotSeen, answer.Paper));
        });
    }

    [Fact]
    public void A_tick_earns_a_right_number_and_one_that_follows_the_methods_share()
    {
        // As in OutcomeTests: 148 in place of 138, and 77 °F follows.
        var unticked = Graded([Of("sum", 148), Of("temperature", 77)]).Answers;
        var ticked = Graded([Of("sum", 148), Of("temperature", 77, shown: true)]).Answers;
        var right = Graded([Of("sum", 138), Of("temperature", 87, shown: true)]).Answers;

        Assert.Equal(
            [(Outcome.Incorrect, 0), (Outcome.FollowThrough, 0.8m)],
            unticked.Take(2).Select(answer => (answer.Outcome, answer.Points))
        );
        Assert.Equal(
            [(Outcome.Incorrect, 0), (Outcome.FollowThrough, 2)],
            ticked.Take(2).Select(answer => (answer.Outcome, answer.Points))
        );
        Assert.Equal([(Outcome.ValueOnly, 0.8m), (Outcome.Sound, 2)], right.Take(2).Select(answer => (answer.Outcome, answer.Points)));
    }

    [Fact]
    public void A_tick_beside_a_wrong_number_a_wrong_turn_or_none_earns_the_methods_share_and_no_more()
    {
        var answers = Graded([
            Of("sum", 141.7, shown: true),
            Of("temperature", 12, shown: true),
            new("dough", "ice", CellValue.Blank, true),
        ]).Answers;

        Assert.Equal([Outcome.Incorrect, Outcome.Misconception, Outcome.Blank], answers.Take(3).Select(answer => answer.Outcome));
        Assert.Equal([1.2m, 1.2m, 1.2m], answers.Take(3).Select(answer => answer.Points));
    }

    [Fact]
    public void Sixty_five_written_for_a_percentage_is_sixty_five_percent_and_nothing_is_said_of_cells()
    {
        // 10 lb of water at 95 °F to 87 °F: 10 × 8 / 207 lb of ice, and of that share 65 % is 2.512 % of the water.
        var answer = Graded([Of("sum", 138), Of("temperature", 87), Of("ice", 80.0 / 207), Of("ice_share", 8.0 / 207 * 65)]).Answers[3];

        Assert.Equal(Outcome.ValueOnly, answer.Outcome);
        Assert.DoesNotContain(answer.Findings, finding => finding is AnswerFinding.HundredfoldPercent);
    }

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void Of_a_file_and_paper_the_better_counts_and_both_are_named(bool paperIsBetter)
    {
        var file = new ReturnedBook(Ada).Answer("sum", "=flour+room+friction").As("ada-berg.xlsx");
        var grades = Graded(file, [Of("sum", 138, shown: paperIsBetter), Of("temperature", paperIsBetter ? 87 : 1, shown: false)]);
        var ada = grades.Students[0];

        Assert.Equal(paperIsBetter, ada.IsFromPaper);
        Assert.Equal(new Flag.PaperBeside(ada.Who, new("ada-berg.xlsx"), new(Place), paperIsBetter), Assert.Single(ada.Flags));
        Assert.Equal(
            paperIsBetter ? [FileFate.OtherVersion, FileFate.Paper] : [FileFate.Graded, FileFate.OtherVersion],
            grades.Files.Select(one => one.Fate)
        );
    }

    private static PaperAnswer Of(string part, double number, bool shown = false) =>
        new("dough", part, CellValue.FromNumber(number), shown);

    private static StudentGrade Graded(IReadOnlyList<PaperAnswer> answers) => Graded(null, answers).Students[0];

    private static ClassGrades Graded(ReturnedFile? file, IReadOnlyList<PaperAnswer> answers)
    {
        var grader = new ClassGrader(Class);
        var judged = grader.Begin();
        if (file is not null)
            judged.Add(grader.Judge(file));
        judged.Add(grader.Judge(new PaperWork(Ada, Place, answers)));
        return grader.Settle(judged);
    }
}
