using ClassKit.Content.Rubrics;
using ClassKit.Terms.Rules;

namespace ClassKit.Content.Tests.Rubrics;

public sealed class GradeRuleReaderTests : IDisposable
{
    private readonly ContentFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    private static string Shipped => File.ReadAllText(Path.Combine(Repository.Rubrics, "term-grade.md")).ReplaceLineEndings("\n");

    [Fact]
    public void A_rule_is_read_as_it_stands()
    {
        var rule = GradeRuleReader.Read(_folder.Write("mine.md", Shipped)).Model;

        Assert.NotNull(rule);
        Assert.Equal(("mine", "Grade of the term"), (rule.Id, rule.Title));
        Assert.Equal(
            [
                new("Calculations", 0.4m, 1, CategoryCounting.Alike),
                new("Bench work", 0.4m, 0, CategoryCounting.Alike),
                new("Written work", 0.2m, 0, CategoryCounting.ByPoints),
            ],
            rule.Categories
        );
        Assert.Equal([new("Bench work", null, 50, 0), new("Bench work", "Safe and clean work", 60, 0)], rule.Lines);
        Assert.Equal([new("Not yet", 0), new("Secure", 60), new("Good", 75), new("Excellent", 90)], rule.Scale.Steps);
        Assert.Equal(
            (new(ResitChoice.Better, 0.7m), AbsenceRule.Zero, 0.1m, MarkerRule.Mean, new Rounding(1, TieRule.Up)),
            (rule.Resit, rule.Absence, rule.LateOff, rule.SecondMarker, rule.Rounding)
        );
    }

    [Theory]
    [InlineData("resit: better, at most 70 %", "resit: replaces", ResitChoice.Replaces, 1.0)]
    [InlineData("resit: better, at most 70 %", "resit: Replaces, at most 55 %", ResitChoice.Replaces, 0.55)]
    public void Resits_replace_or_are_capped(string find, string replacement, ResitChoice choice, double most) =>
        Assert.Equal(
            new ResitRule(choice, (decimal)most),
            GradeRuleReader.Read(_folder.Write("mine.md", Complaint.Break(Shipped, find, replacement))).Model!.Resit
        );

    [Theory]
    [InlineData("| Calculations | 40 % |", "| Calculations | 45 % |", "## Categories", "The weights come to 105 %", "add up to 100 %")]
    [InlineData("| Calculations | 40 % |", "| Calculations | 0 % |", "", "The weight is 0 %", "above 0")]
    [InlineData("| Calculations | 40 % |", "| Calculations | 0.4 |", "", "The weight is `0.4`, without a unit", "`40 %`")]
    [InlineData("| Bench work | 40 % | 0 |", "| Calculations | 40 % | 0 |", "", "`Calculations` is here a second time", "one row", 3)]
    [InlineData(
        "| Written work | 20 % | 0 |",
        "| Written work | 20 % | 1 |",
        "",
        "lowest is dropped where works count by points",
        "count alike"
    )]
    [InlineData("| Calculations | 40 % | 1 |", "| Calculations | 40 % | 11 |", "", "`Drop lowest` is 11", "from 0 to 10")]
    [InlineData("| Calculations | 40 % | 1 |", "| Calculations | 40 % | half |", "", "`Drop lowest` is `half`", "Write digits")]
    [InlineData("| by points |", "| by pionts |", "", "`Works count` is `by pionts`", "Did you mean `by points`?")]
    [InlineData("| Bench work | 50 % |", "| Benchwork | 50 % |", "", "`Benchwork` is no category", "Did you mean `Bench work`?")]
    [InlineData("| Bench work: Safe and clean work |", "| Bench work: |", "", "names no criterion", "leave the colon out")]
    [InlineData("| Bench work: Safe and clean work |", "| Bench work |", "", "must be passed in a row above already", "one of them")]
    [InlineData(
        "| 50 % | Not yet |",
        "| 50 % | Excellent |",
        "",
        "`Excellent` is the highest grade",
        "highest grade that a student can have"
    )]
    [InlineData("| 50 % | Not yet |", "| 50 % | Failed |", "", "`Failed` is no grade of the scale", "Known here")]
    [InlineData("| 50 % | Not yet |", "| 150 % | Not yet |", "", "`At least` is 150 %", "above 0 to 100")]
    [InlineData("| Good | 75 % |", "| Good | 95 % |", "", "`Good` begins no lower than `Excellent`", "from the highest to the lowest")]
    [InlineData("| Good | 75 % |", "| Secure | 75 % |", "| Secure | 60 % |", "`Secure` is here a second time", "one row")]
    [InlineData("| Not yet | 0 % |", "| Not yet | 10 % |", "", "does not begin at 0 %", "`0 %`")]
    [InlineData("rounding: 1 %", "rounding: 3 %", "", "no whole number of such steps", "divides 100 %")]
    [InlineData("rounding: 1 %", "rounding: 0 %", "", "`rounding` is 0 %", "from 0.001 to 50")]
    [InlineData("tie: up", "tie: upwards", "", "`tie` is `upwards`", "up")]
    [InlineData("resit: better, at most 70 %", "resit: best", "", "`resit` is `best`", "better")]
    [InlineData("resit: better, at most 70 %", "resit: better, up to 70 %", "", "limited by `up to 70 %`", "at most 70 %")]
    [InlineData("resit: better, at most 70 %", "resit: better, at most 170 %", "", "The limit of `resit` is 170 %", "above 0")]
    [InlineData("absent: zero\n", "", "---", "`absent` is missing", "`absent: zero`")]
    [InlineData("## Scale", "### Scale", "", "wrong number of #", "`## Scale`", 3)]
    [InlineData("late: 10 %", "late: 110 %", "", "`late` is 110 %", "from 0 to 100")]
    public void A_mistake_in_a_rule_is_named(string find, string replacement, string? at, string found, string remedy, int problems = 1)
    {
        var sound = Shipped;
        var broken = Complaint.Break(sound, find, replacement);

        Complaint.Among(
            GradeRuleReader.Read(_folder.Write("mine.md", broken)),
            problems,
            Complaint.LineFor(at, sound, find, broken),
            found,
            remedy
        );
    }

    /// <summary>Every line left out, doubled, or cut in the middle: a rule or complaints with a place, never anything else.</summary>
    [Fact]
    public void Damaged_rules_are_refused_in_words()
    {
        var lines = Shipped.Split('\n');
        for (var at = 0; at < lines.Length; at++)
        {
            foreach (
                var middle in new string[][]
                {
                    [],
                    [lines[at], lines[at]],
                    [lines[at][..(lines[at].Length / 2)]],
                    [lines[at].Replace('|', '\u0001')],
                    [new('9', 400)],
                }
            )
            {
                var reading = GradeRuleReader.Read(
                    _folder.Write("mine.md", string.Join('\n', [.. lines[..at], .. middle, .. lines[(at + 1)..]]))
                );
                Assert.True(reading.Succeeded || reading.Problems.All(problem => problem.Found.Length > 0 && problem.Expected.Length > 0));
            }
        }
    }
}
