using ClassKit.Terms.Agreement;

namespace ClassKit.Terms.Tests.Agreement;

/// <summary>Coefficients of agreement against the tables that their authors published.</summary>
public sealed class PublishedAgreementTests
{
    /// <summary>Six targets and four judges: Shrout and Fleiss, Psychological Bulletin 86, 1979, 420, table 2.</summary>
    private static readonly IReadOnlyList<IReadOnlyList<double>> ShroutAndFleiss =
    [
        [9, 2, 5, 8],
        [6, 1, 3, 2],
        [8, 4, 6, 8],
        [7, 1, 2, 6],
        [10, 5, 6, 9],
        [6, 2, 4, 7],
    ];

    /// <summary>Table 4 of the same paper.</summary>
    [Fact]
    public void The_six_intraclass_correlations_are_those_of_Shrout_and_Fleiss()
    {
        var six = IntraclassCorrelations.Of(ShroutAndFleiss)!;

        Assert.Equal(
            [0.17, 0.29, 0.71, 0.44, 0.62, 0.91],
            new[] { six.OneSingle, six.TwoSingle, six.ThreeSingle, six.OneMean, six.TwoMean, six.ThreeMean }.Select(one =>
                Math.Round(one.Value, 2, MidpointRounding.AwayFromZero)
            )
        );
    }

    /// <summary>
    /// Cohen, Psychological Bulletin 70, 1968, 213: 200 cases, disagreements 1, 3 and 6, kappa .492 and weighted kappa .348 (also in the
    /// documentation of R's psych).
    /// </summary>
    [Fact]
    public void Weighted_kappa_is_that_of_Cohen()
    {
        var counts = Times(
            200,
            new[,]
            {
                { 0.44, 0.07, 0.09 },
                { 0.05, 0.20, 0.05 },
                { 0.01, 0.03, 0.06 },
            }
        );

        Assert.Equal(
            0.348,
            WeightedKappa
                .Of(
                    counts,
                    new[,]
                    {
                        { 1, 1 - (1 / 6.0), 1 - (3 / 6.0) },
                        { 1 - (1 / 6.0), 1, 0 },
                        { 1 - (3 / 6.0), 0, 1 },
                    }
                )!
                .Value,
            3
        );
        Assert.Equal(
            0.492,
            WeightedKappa
                .Of(
                    counts,
                    new double[,]
                    {
                        { 1, 0, 0 },
                        { 0, 1, 0 },
                        { 0, 0, 1 },
                    }
                )!
                .Value,
            3
        );
    }

    /// <summary>
    /// Two dermatologists on 88 patients, weights by distance: the example of PROC FREQ in the SAS/STAT User's Guide. The table is from
    /// there, its figures from memory: kappa .3449 (.2030 to .4868), weighted kappa .5082 (.3798 to .6366).
    /// </summary>
    [Fact]
    public void Kappas_and_their_intervals_are_those_of_the_skin_conditions()
    {
        var counts = new double[,]
        {
            { 10, 4, 1, 0 },
            { 5, 10, 12, 2 },
            { 2, 4, 12, 5 },
            { 0, 2, 6, 13 },
        };
        var (same, byDistance) = (new double[4, 4], new double[4, 4]);
        for (var row = 0; row < 4; row++)
        {
            for (var column = 0; column < 4; column++)
                (same[row, column], byDistance[row, column]) = (row == column ? 1 : 0, 1 - (Math.Abs(row - column) / 3.0));
        }

        Assert.Equal([0.3449, 0.2030, 0.4868], Rounded(WeightedKappa.Of(counts, same)!));
        Assert.Equal([0.5082, 0.3798, 0.6366], Rounded(WeightedKappa.Of(counts, byDistance)!));
    }

    [Fact]
    public void Perfect_agreement_is_one_and_no_interval_is_claimed()
    {
        Assert.Equal(
            new(1, null),
            WeightedKappa.Of(
                new double[,]
                {
                    { 4, 0 },
                    { 0, 6 },
                },
                WeightedKappa.SquaredWeights(2)
            )
        );
        var six = IntraclassCorrelations.Of([
            [3, 3],
            [5, 5],
            [9, 9],
        ])!;
        Assert.Equal((1, 1, null), (six.TwoSingle.Value, six.ThreeMean.Value, six.TwoSingle.Interval));
    }

    [Fact]
    public void Where_nobody_differs_agreement_is_undefined_and_not_zero()
    {
        Assert.Null(
            WeightedKappa.Of(
                new double[,]
                {
                    { 10, 0 },
                    { 0, 0 },
                },
                WeightedKappa.SquaredWeights(2)
            )
        );
        Assert.Null(WeightedKappa.Of(new double[2, 2], WeightedKappa.SquaredWeights(2)));
        Assert.Null(
            IntraclassCorrelations.Of([
                [4, 4],
                [4, 4],
            ])
        );
        Assert.Null(
            IntraclassCorrelations.Of([
                [4, 5],
            ])
        );
    }

    private static IEnumerable<double> Rounded(Coefficient kappa) =>
        new[] { kappa.Value, kappa.Interval!.Value.Low, kappa.Interval.Value.High }.Select(figure =>
            Math.Round(figure, 4, MidpointRounding.AwayFromZero)
        );

    private static double[,] Times(double cases, double[,] shares)
    {
        for (var row = 0; row < shares.GetLength(0); row++)
        {
            for (var column = 0; column < shares.GetLength(1); column++)
                shares[row, column] *= cases;
        }
        return shares;
    }
}
