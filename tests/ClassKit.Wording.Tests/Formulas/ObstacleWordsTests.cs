using ClassKit.CellFormulas.Formulas;
using ClassKit.CellFormulas.Obstacles;
using ClassKit.CellFormulas.Sheets;
using ClassKit.CellFormulas.Syntax;
using ClassKit.Wording.Formulas;
using ClassKit.Wording.Tests.Samples;

namespace ClassKit.Wording.Tests.Formulas;

public class ObstacleWordsTests
{
    private static readonly CellAddress[] Two = [new("Sheet1", 1, 1), new("Sheet1", 1, 2)];

    public static TheoryData<Obstacle, string> Said =>
        new()
        {
            { new Obstacle.Arguments("POWER", 2, 2, 1), "POWER takes 2 arguments, not 1" },
            { new Obstacle.Arguments("ABS", 1, 1, 2), "ABS takes 1 argument, not 2" },
            { new Obstacle.Arguments("SUMIF", 2, 3, 1), "SUMIF takes 2 to 3 arguments, not 1" },
            { new Obstacle.Arguments("IFS", 2, null, 1), "IFS takes at least 2 arguments, not 1" },
            {
                new Obstacle.Circle(Two, 2, IsIterated: false),
                "these cells depend on each other in a circle: 'Sheet1'!A1 → 'Sheet1'!B1 → 'Sheet1'!A1"
            },
            {
                new Obstacle.Circle(Two, 3, IsIterated: true),
                "the workbook computes circles by going round them, and these cells depend on each other in a circle: 'Sheet1'!A1 → 'Sheet1'!B1 → ... → 'Sheet1'!A1"
            },
            {
                new Obstacle.NotEvaluated(Construct.SeveralSheets, "Sheet1:Sheet3!A1"),
                "a reference through several sheets (`Sheet1:Sheet3!A1`) is not evaluated"
            },
            {
                new Obstacle.NoFormula(new("Sheet1", 1, 2), CellFormula.Parse("=(C7*C8").Error!),
                "in 'Sheet1'!B1 a bracket is opened and not closed"
            },
            {
                new Obstacle.NoFormula(new("Sheet1", 1, 2), CellFormula.Parse("=SUM(C7:C8").Error!),
                "in 'Sheet1'!B1 a bracket is opened and not closed"
            },
            {
                new Obstacle.NoFormula(new("Sheet1", 1, 2), CellFormula.Parse("=C7)").Error!),
                "'Sheet1'!B1 holds no formula that can be read: character 4: found `)`, expected an operator or the end"
            },
            {
                new Obstacle.NoFormula(new("Sheet1", 1, 2), CellFormula.Parse("=1+").Error!),
                "in 'Sheet1'!B1 it ends where a cell or a number should follow"
            },
            { new Obstacle.NoColumn("Doughs", "Doughs[Salt]"), "the table Doughs has no such column: `Doughs[Salt]`" },
        };

    [Theory]
    [MemberData(nameof(Said))]
    public void An_obstacle_is_said_with_its_cells_names_and_numbers(Obstacle obstacle, string words) =>
        Assert.Equal(words, ObstacleWords.Of(obstacle));

    [Fact]
    public void Every_obstacle_there_is_has_words() =>
        Assert.All(Every.Of<Obstacle>(), obstacle => Assert.NotEmpty(ObstacleWords.Of(obstacle)));

    [Fact]
    public void Whatever_the_author_of_a_workbook_chose_can_be_left_out() =>
        Assert.All(Every.Of<Obstacle>(), obstacle =>
            Assert.DoesNotContain(
                "ours",
                ObstacleWords.Of(
                    obstacle is Obstacle.Arguments or Obstacle.ChangesEachTime ? new Obstacle.NoCells() : obstacle.Under(_ => "…")
                ),
                StringComparison.Ordinal
            )
        );
}
