namespace ClassKit.Grading.Statistics;

/// <summary>How one item behaved in a group of students.</summary>
/// <param name="Difficulty">The mean share of its points that was earned, 0 to 1: the classical difficulty index, high for an easy item;
/// null without students.</param>
/// <param name="WithTotal">Its correlation with the total, the item included; null where one of them does not vary.</param>
/// <param name="WithRest">Its correlation with the total of all other items; null where one of them does not vary.</param>
/// <param name="Discrimination">How much larger a share the best 27 % earned than the weakest 27 % (Kelley, J. Educ. Psychol. 30, 1939,
/// 17), -1 to 1; null where nobody's total differs.</param>
/// <param name="AlphaWithout">Cronbach's alpha of the other items; null where undefined.</param>
public sealed record ItemStatistics(double? Difficulty, double? WithTotal, double? WithRest, double? Discrimination, double? AlphaWithout)
{
    /// <summary>How many students were asked the item.</summary>
    public required int Asked { get; init; }

    /// <summary>Statistics of every item, in the table's order.</summary>
    public static IReadOnlyList<ItemStatistics> Of(ScoreTable table)
    {
        ArgumentNullException.ThrowIfNull(table);
        var groups = ExtremeGroups.Of(table.Totals);
        return [.. Enumerable.Range(0, table.Items).Select(item => Of(table, item, groups))];
    }

    private static ItemStatistics Of(ScoreTable table, int item, ExtremeGroups? groups)
    {
        var scores = table.Item(item);
        return new(
            scores.Count == 0 ? null : (double)(scores.Average() / table.Most[item]),
            Moments.Correlation(scores, table.Totals),
            Moments.Correlation(scores, table.Rest(item)),
            groups?.Difference(scores) / (double)table.Most[item],
            table.Items < 3 ? null : Reliability.AlphaOf(table.Without(item))
        )
        {
            Asked = scores.Count,
        };
    }
}
