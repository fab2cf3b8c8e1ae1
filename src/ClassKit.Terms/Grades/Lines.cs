namespace ClassKit.Terms;

/// <summary>Holds a student's work against what must be passed.</summary>
internal static class Lines
{
    public static LineResult Settle(PassLine line, IReadOnlyList<CategoryResult> categories, ResitChoice choice)
    {
        var category = categories.First(category => category.Category.Name == line.Category);
        var share = line.Criterion is { } criterion ? Mean(category.Works.Select(work => Reached(work, criterion, choice))) : category.Share;
        return new(line, share, share is not { } reached ? LineState.Open : Rounding.Compared(reached * 100) >= line.AtLeast ? LineState.Passed : LineState.Missed);
    }

    private static decimal? Mean(IEnumerable<decimal?> works)
    {
        var shares = works.OfType<decimal>().ToList();
        return shares.Count == 0 ? null : shares.Sum() / shares.Count;
    }

    /// <summary>Where the better sitting counts, the better one of each criterion does: else a better resit could lose what the first had shown.</summary>
    public static decimal? Reached(WorkResult work, string criterion, ResitChoice choice) => choice switch
    {
        ResitChoice.Replaces => Of(work.Counted, criterion),
        ResitChoice.Better => work.Sittings.Max(sitting => Of(sitting, criterion)),
    };

    private static decimal? Of(SittingResult? sitting, string criterion) => sitting?.Attempt.Mark.Criteria.FirstOrDefault(mark => mark.Criterion == criterion)?.Share;
}
