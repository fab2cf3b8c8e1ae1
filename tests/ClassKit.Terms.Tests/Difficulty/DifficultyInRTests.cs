using ClassKit.Exercises.Randomness;
using ClassKit.Terms.Difficulty;

namespace ClassKit.Terms.Tests.Difficulty;

/// <summary>
/// Classes in which not everybody was asked the same, against R: difficulties and errors by its package eRm, discrimination by psych where
/// all were asked the same.
/// </summary>
public sealed class DifficultyInRTests
{
    private const int Parts = 8;

    private const string Script = """
        suppressMessages({library(eRm); library(psych)})
        for (file in commandArgs(trailingOnly = TRUE)) {
          answers <- read.csv(file, header = FALSE)
          fit <- RM(as.matrix(answers))
          drop <- if (any(is.na(answers))) numeric(0) else suppressMessages(suppressWarnings(alpha(answers)))$item.stats$r.drop
          cat("\nresult", sprintf("%.12g", c(-fit$betapar, fit$se.beta, drop)), "\n")
        }
        """;

    [Fact]
    public void Random_classes_have_the_difficulties_of_eRm()
    {
        Tool.RWithErm.Require();
        var tables = Enumerable.Range(1, 8).Select(seed => Random((ulong)seed, isSpread: seed % 2 == 0)).ToList();
        var results = RWithPsych.Results(
            Script,
            [
                .. tables.Select(table =>
                    table.Select(row =>
                        string.Join(',', row.Select(cell => cell?.ToString(System.Globalization.CultureInfo.InvariantCulture) ?? "NA"))
                    )
                ),
            ]
        );
        Assert.All(tables.Zip(results), pair =>
        {
            var past = PastDifficulty.Of([.. pair.First.Select(row => Classes.Work(row))]);
            var parts = Enumerable.Range(0, Parts).Select(at => past.Of(Classes.Part(at))!).ToList();
            double[] ours =
            [
                .. parts.Select(part => part.Difficulty!.Value),
                .. parts.Select(part => part.Error!.Value),
                .. pair.Second.Length > 2 * Parts ? parts.Select(part => part.Discrimination!.Value) : [],
            ];
            Assert.Equal(pair.Second, ours, (theirs, mine) => Math.Abs(theirs - mine) < 1e-3);
        });
    }

    private static List<IEnumerable<int?>> Random(ulong seed, bool isSpread)
    {
        var draws = SeededDraws.For(seed, "difficulty");
        var difficulties = Enumerable.Range(0, Parts).Select(_ => Classes.Normal(draws)).ToList();
        // Three sets that overlap, as spread sets do.
        return
        [
            .. Enumerable
                .Range(0, 90)
                .Select(student =>
                    Classes.Row(draws, 0.3 + Classes.Normal(draws), difficulties, at => !isSpread || (at + student) % 3 != 0)
                ),
        ];
    }
}
