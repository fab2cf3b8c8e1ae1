namespace ClassKit.Terms.Agreement;

/// <summary>
/// The six intraclass correlations of Shrout and Fleiss (Psychological Bulletin 86, 1979, 420): how much of the variance of marks is the
/// students'.
/// </summary>
/// <remarks>
/// Intervals after the same paper, those of (2,1) and (2,k) by Satterthwaite's approximation; they equal those of R's package psych.
/// </remarks>
/// <param name="OneSingle">ICC(1,1): every student marked by other markers; one marker's mark.</param>
/// <param name="TwoSingle">ICC(2,1): the same markers, drawn from many; one marker's mark. A marker who is stricter throughout lowers
/// it.</param>
/// <param name="ThreeSingle">ICC(3,1): just these markers; one marker's mark. A marker who is stricter throughout does not lower
/// it.</param>
/// <param name="OneMean">ICC(1,k): as (1,1) for the mean of the markers.</param>
/// <param name="TwoMean">ICC(2,k): as (2,1) for the mean.</param>
/// <param name="ThreeMean">ICC(3,k): as (3,1) for the mean.</param>
public sealed record IntraclassCorrelations(
    Coefficient OneSingle,
    Coefficient TwoSingle,
    Coefficient ThreeSingle,
    Coefficient OneMean,
    Coefficient TwoMean,
    Coefficient ThreeMean
)
{
    /// <summary>Computes them.</summary>
    /// <param name="marks">A row a student, in each one mark of every marker.</param>
    /// <returns>
    /// Null with fewer than two students or markers, or where no student differs from another: then they are undefined, not 0.
    /// </returns>
    public static IntraclassCorrelations? Of(IReadOnlyList<IReadOnlyList<double>> marks)
    {
        ArgumentNullException.ThrowIfNull(marks);
        if (marks.Count < 2 || marks[0].Count < 2)
            return null;
        var squares = MeanSquares.Of(marks);
        if (squares.Between == 0)
            return null;
        double n = squares.Students,
            k = squares.Markers;
        var (one, oneMean) = Of(squares.Between, squares.Within, n - 1, n * (k - 1), k);
        var (three, threeMean) = Of(squares.Between, squares.Error, n - 1, (n - 1) * (k - 1), k);
        var (two, twoMean) = Two(squares, n, k);
        return new(one, two, three, oneMean, twoMean, threeMean);
    }

    /// <summary>For one marker and for the mean of all, from the mean squares between students and of the error.</summary>
    private static (Coefficient Single, Coefficient Mean) Of(double between, double error, double above, double below, double k)
    {
        var ratio = between / error;
        var low = ratio / FQuantile.Of(1 - Interval.Tail, above, below);
        var high = ratio * FQuantile.Of(1 - Interval.Tail, below, above);
        double Single(double f) => (f - 1) / (f + k - 1);
        return (
            new((between - error) / (between + ((k - 1) * error)), Interval.Of(Single(low), Single(high))),
            new((between - error) / between, error == 0 ? null : Interval.Of(1 - (1 / low), 1 - (1 / high)))
        );
    }

    private static (Coefficient Single, Coefficient Mean) Two(MeanSquares squares, double n, double k)
    {
        var (between, among, error) = (squares.Between, squares.AmongMarkers, squares.Error);
        var single = (between - error) / (between + ((k - 1) * error) + (k * (among - error) / n));
        var mean = (between - error) / (between + ((among - error) / n));
        var ratio = among / error;
        var rest = (n * (1 + ((k - 1) * single))) - (k * single);
        var freedom =
            (k - 1)
            * (n - 1)
            * Math.Pow((k * single * ratio) + rest, 2)
            / (((n - 1) * k * k * single * single * ratio * ratio) + (rest * rest));
        var upper = FQuantile.Of(1 - Interval.Tail, n - 1, freedom);
        var lower = FQuantile.Of(1 - Interval.Tail, freedom, n - 1);
        var others = (k * among) + (((k * n) - k - n) * error);
        var low = n * (between - (upper * error)) / ((upper * others) + (n * between));
        var high = n * ((lower * between) - error) / (others + (n * lower * between));
        double Mean(double end) => end * k / (1 + (end * (k - 1)));
        return (new(single, Interval.Of(low, high)), new(mean, Interval.Of(Mean(low), Mean(high))));
    }
}
