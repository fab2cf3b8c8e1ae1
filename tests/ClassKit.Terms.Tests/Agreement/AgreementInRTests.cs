using System.Globalization;
using ClassKit.Exercises.Randomness;
using ClassKit.Terms.Agreement;

namespace ClassKit.Terms.Tests.Agreement;

/// <summary>Agreement on random classes against R: coefficients by its package psych.</summary>
/// <remarks>
/// The interval of weighted kappa is held against the delta method, with derivatives taken numerically in R. That of psych 2.2.9 is not the
/// one of Fleiss, Cohen and Everitt: it multiplies each row's share by the sum of that row's weights where the paper has the mean of the
/// weights over the rows.
/// </remarks>
public sealed class AgreementInRTests
{
    private const int Levels = 4;

    private const string Script = """
        suppressMessages(library(psych))
        agreement <- function(p, w) { seen <- sum(w * p); chance <- sum(w * outer(rowSums(p), colSums(p))); (seen - chance) / (1 - chance) }
        error <- function(p, w, n, h = 1e-6) {
          slope <- p * 0
          for (i in seq_along(p)) { up <- p; up[i] <- up[i] + h; down <- p; down[i] <- down[i] - h; slope[i] <- (agreement(up, w) - agreement(down, w)) / (2 * h) }
          sqrt((sum(p * slope^2) - sum(p * slope)^2) / n)
        }
        for (file in commandArgs(trailingOnly = TRUE)) {
          marks <- read.csv(file, header = FALSE)
          icc <- suppressWarnings(suppressMessages(ICC(marks, lmer = FALSE)))$results
          kappa <- suppressWarnings(cohen.kappa(marks[, 1:2], levels = 0:3))$weighted.kappa
          p <- unclass(table(factor(marks[, 1], 0:3), factor(marks[, 2], 0:3))) / nrow(marks)
          half <- qnorm(0.975) * error(p, 1 - (row(p) - col(p))^2 / 9, nrow(marks))
          cat("\nresult", sprintf("%.12g", c(icc$ICC, icc$`lower bound`, icc$`upper bound`, kappa, max(-1, kappa - half), min(1, kappa + half))), "\n")
        }
        """;

    [Fact]
    public void Random_classes_agree_as_R_computes()
    {
        var tables = Enumerable.Range(1, 40).Select(seed => Random((ulong)seed)).ToList();
        var results = RWithPsych.Results(
            Script,
            [
                .. tables.Select(table =>
                    table.Select(row => string.Join(',', row.Select(mark => mark.ToString(CultureInfo.InvariantCulture))))
                ),
            ]
        );
        Assert.All(tables.Zip(results), pair =>
            Assert.Equal(pair.Second, Ours(pair.First), (theirs, ours) => Math.Abs(theirs - ours) <= 1e-6)
        );
    }

    private static double[] Ours(IReadOnlyList<IReadOnlyList<double>> marks)
    {
        var six = IntraclassCorrelations.Of(marks)!;
        Coefficient[] all = [six.OneSingle, six.TwoSingle, six.ThreeSingle, six.OneMean, six.TwoMean, six.ThreeMean];
        var counts = new double[Levels, Levels];
        foreach (var row in marks)
            counts[(int)row[0], (int)row[1]]++;
        var kappa = WeightedKappa.Of(counts, WeightedKappa.SquaredWeights(Levels))!;
        return
        [
            .. all.Select(one => one.Value),
            .. all.Select(one => one.Interval!.Value.Low),
            .. all.Select(one => one.Interval!.Value.High),
            kappa.Value,
            kappa.Interval!.Value.Low,
            kappa.Interval.Value.High,
        ];
    }

    /// <summary>
    /// Students of different ability, seen by two to four markers who slip by a level now and then; small classes among them.
    /// </summary>
    private static IReadOnlyList<IReadOnlyList<double>> Random(ulong seed)
    {
        var draws = SeededDraws.For(seed, "agreement");
        var (students, markers, slip) = (5 + draws.Below(40), 2 + draws.Below(3), 20 + draws.Below(60));
        return
        [
            .. Enumerable
                .Range(0, students)
                .Select(_ =>
                {
                    var level = draws.Below(Levels);
                    return (IReadOnlyList<double>)
                        [
                            .. Enumerable
                                .Range(0, markers)
                                .Select(_ => (double)Math.Clamp(level + (draws.Below(100) < slip ? draws.Below(3) - 1 : 0), 0, Levels - 1)),
                        ];
                }),
        ];
    }
}
