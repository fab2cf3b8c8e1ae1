using System.Globalization;
using ClassKit.Grading.Results;
using ClassKit.UseCases.Tests.Samples;

namespace ClassKit.UseCases.Tests.Hostile;

/// <summary>What is wrong with one cell is that cell's outcome; every other answer of the workbook is graded as it deserves.</summary>
public sealed class CellLimitTests
{
    public static TheoryData<string, string, Outcome> Contents =>
        new()
        {
            { "a formula of 8,200 characters", Formula("1+" + string.Join('+', Enumerable.Repeat("1", 4_100))), Outcome.Unsupported },
            {
                "a formula of 400,000 characters",
                Formula("SUM(" + string.Join(',', Enumerable.Repeat("1", 200_000)) + ")"),
                Outcome.Unsupported
            },
            { "parentheses 250 deep", Formula(new string('(', 250) + "1" + new string(')', 250)), Outcome.Unsupported },
            { "parentheses 4,000 deep", Formula(new string('(', 4_000) + "1" + new string(')', 4_000)), Outcome.Unsupported },
            {
                "functions 1,000 deep",
                Formula(string.Concat(Enumerable.Repeat("ABS(", 1_000)) + "1" + new string(')', 1_000)),
                Outcome.Unsupported
            },
            { "4,000 signs", Formula(new string('-', 4_000) + "1"), Outcome.Unsupported },
            { "4,000 percent signs", Formula("1" + new string('%', 4_000)), Outcome.Unsupported },
            { "arrays 1,000 deep", Formula(new string('{', 1_000) + "1" + new string('}', 1_000)), Outcome.Unsupported },
            { "no formula at all", Formula("1+*/)"), Outcome.Unsupported },
            { "a text of 40,000 characters", $" t=\"inlineStr\"><is><t>{new string('x', 40_000)}</t></is>", Outcome.Unreadable },
            { "a text of 500,000 characters", $" t=\"str\"><v>{new string('7', 500_000)}</v>", Outcome.Unreadable },
        };

    [Theory]
    [MemberData(nameof(Contents))]
    public void Only_the_answer_that_holds_it_is_lost(string what, string content, Outcome outcome)
    {
        Assert.NotEmpty(what);
        foreach (var cell in Sheets.AnswerCells)
        {
            var workbook = Sheets.Parts.Change(Sheets.Sheet, xml => CellXml.Put(xml, cell, content)).Pack();
            var answers = Grade(workbook).Answers;
            var place = SmallClass
                .AdasAnswers.ToList()
                .FindIndex(answer => answer.Address.Sheet == Sheets.Name && answer.Address.Cell == cell);

            Assert.Equal(outcome, answers[place].Outcome);
            var builds = answers.Where((_, at) => at > place && SmallClass.AdasAnswers[at].Address.Sheet == Sheets.Name).ToList();
            Assert.All(answers.Where((_, at) => at != place).Except(builds), answer => Assert.Equal(Outcome.Sound, answer.Outcome));
            Assert.All(builds, answer =>
                Assert.True(answer.Outcome is Outcome.Sound or Outcome.FollowThrough or Outcome.Unsupported, answer.Outcome.ToString())
            );
        }
    }

    [Fact]
    public void A_formula_that_many_cells_share_and_that_grows_too_long_is_lost_in_those_cells_only()
    {
        var leader = string.Join('+', Enumerable.Repeat("A1", 2_700));
        var rows = Sheets.Rows(60, 1, (row, _) =>
            row == 1000 ? $"><f t=\"shared\" si=\"7\" ref=\"A1000:A1059\">{leader}</f><v>1</v>" : "><f t=\"shared\" si=\"7\"/><v>1</v>"
        );

        Assert.All(Grade(Sheets.WithRows(rows)).Answers, answer => Assert.Equal(Outcome.Sound, answer.Outcome));
    }

    [Theory]
    [InlineData("a formula of 9,000 characters", 9_000)]
    [InlineData("a formula of 300,000 characters", 300_000)]
    public void The_same_holds_in_open_documents(string what, int length)
    {
        Assert.NotEmpty(what);
        var formula = "of:=1+" + string.Join('+', Enumerable.Repeat("1", length / 2));
        var workbook = Parts
            .Of(Corpus.OpenDocument)
            .Change("content.xml", xml =>
                xml.Replace(
                    "</table:table>",
                    $"<table:table-row table:number-rows-repeated=\"900\"><table:table-cell/></table:table-row><table:table-row><table:table-cell table:formula=\"{formula}\" office:value-type=\"float\" office:value=\"1\"/></table:table-row></table:table>",
                    StringComparison.Ordinal
                )
            )
            .Pack();

        Assert.Equal(GradeStatus.Graded, Grade(workbook).Status);
    }

    private static StudentGrade Grade(byte[] workbook)
    {
        using var folder = new TemporaryFolder();
        folder.Write("ada.xlsx", workbook);
        return Graded.Of(folder.Path).Students[0];
    }

    private static string Formula(string formula) => string.Create(CultureInfo.InvariantCulture, $"><f>{formula}</f><v>1</v>");
}
