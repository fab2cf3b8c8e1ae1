namespace ClassKit.Terms.Agreement;

/// <summary>Where the variance of a table of marks lies: the analysis of variance that intraclass correlations are made of.</summary>
/// <param name="Students">How many rows; at least 2.</param>
/// <param name="Markers">How many columns; at least 2.</param>
/// <param name="Between">The mean square between students.</param>
/// <param name="Within">Within students.</param>
/// <param name="AmongMarkers">Between markers.</param>
/// <param name="Error">What is left.</param>
internal sealed record MeanSquares(int Students, int Markers, double Between, double Within, double AmongMarkers, double Error)
{
    public static MeanSquares Of(IReadOnlyList<IReadOnlyList<double>> marks)
    {
        var (students, markers) = (marks.Count, marks[0].Count);
        var mean = marks.Average(row => row.Average());
        var between = markers * marks.Sum(row => Square(row.Average() - mean));
        var among = students * Enumerable.Range(0, markers).Sum(marker => Square(marks.Average(row => row[marker]) - mean));
        var within = marks.Sum(row => row.Sum(mark => Square(mark - row.Average())));

        // What is left is a difference of sums; a rounding error must not make it negative.
        var error = Math.Max(0, within - among);
        if (error < 1e-12 * within)
            error = 0;
        return new(
            students,
            markers,
            between / (students - 1),
            within / (students * (markers - 1)),
            among / (markers - 1),
            error / ((students - 1) * (markers - 1))
        );
    }

    private static double Square(double difference) => difference * difference;
}
