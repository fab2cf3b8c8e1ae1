using System.Globalization;
using ClassKit.Exercises.Randomness;
using ClassKit.Grading.Statistics;

namespace ClassKit.Grading.Tests.Statistics;

/// <summary>Item statistics of random classes against R's package psych.</summary>
public class StatisticsInRTests
{
    private const string Script = """
        suppressMessages(library(psych))
        for (file in commandArgs(trailingOnly = TRUE)) {
          scores <- read.csv(file, header = FALSE)
          a <- suppressWarnings(suppressMessages(alpha(scores, check.keys = FALSE)))
          ci <- alpha.ci(a$total$raw_alpha, nrow(scores), ncol(scores), digits = 15)
          cat("\nresult", sprintf("%.12g", c(a$total$raw_alpha, unlist(ci$lower.ci), unlist(ci$upper.ci), a$item.stats$raw.r, a$item.stats$r.drop, a$alpha.drop$raw_alpha)), "\n")
        }
        """;

    [Fact]
    public void Random_classes_have_the_statistics_that_R_computes()
    {
        // An item that does not vary has no correlation; R leaves it out with a warning.
        var tables = Enumerable
            .Range(1, 20)
            .Select(seed => Random((ulong)seed))
            .Where(table => ItemStatistics.Of(table).All(item => item.WithTotal is not null))
            .ToList();
        Assert.InRange(tables.Count, 10, 20);
        var results = RWithPsych.Results(Script, [.. tables.Select(Lines)]);
        Assert.All(tables.Zip(results), pair =>
            Assert.Equal(pair.Second, Ours(pair.First), (theirs, ours) => Math.Abs(theirs - ours) <= 1e-6)
        );
    }

    private static double[] Ours(ScoreTable table)
    {
        var reliability = Reliability.Of(table)!;
        var items = ItemStatistics.Of(table);
        return
        [
            reliability.Alpha,
            reliability.Low,
            reliability.High,
            .. items.Select(item => item.WithTotal!.Value),
            .. items.Select(item => item.WithRest!.Value),
            .. items.Select(item => item.AlphaWithout!.Value),
        ];
    }

    /// <summary>Students of different ability on items of different difficulty and worth, in half points.</summary>
    private static ScoreTable Random(ulong seed)
    {
        var random = SeededDraws.For(seed, "item statistics");
        var most = Enumerable.Range(0, 3 + random.Below(12)).Select(_ => 1m + random.Below(4)).ToList();
        var students = Enumerable.Range(0, 10 + random.Below(60)).Select(_ => random.Below(100)).ToList();
        return new(
            most,
            [
                .. students.Select(ability =>
                    (IReadOnlyList<decimal>)
                        [
                            .. most.Select(points =>
                                Math.Round(points * (random.Below(100) < ability ? 2 : random.Below(3)), MidpointRounding.AwayFromZero) / 2
                            ),
                        ]
                ),
            ]
        );
    }

    private static IEnumerable<string> Lines(ScoreTable table) =>
        Enumerable
            .Range(0, table.Students)
            .Select(student =>
                string.Join(
                    ',',
                    Enumerable.Range(0, table.Items).Select(item => table.Item(item)[student].ToString(CultureInfo.InvariantCulture))
                )
            );
}
