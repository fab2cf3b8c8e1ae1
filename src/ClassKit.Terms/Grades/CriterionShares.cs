using ClassKit.Terms.Rules;

namespace ClassKit.Terms.Grades;

/// <summary>What single criteria of a practical rubric came to.</summary>
public static class CriterionShares
{
    /// <summary>What a criterion came to in one work, 0 to 1; null where nothing was marked.</summary>
    /// <remarks>
    /// Where the better sitting counts, the better one of each criterion does: else a better resit could lose what the first had shown.
    /// </remarks>
    public static decimal? Reached(WorkResult work, string criterion, ResitChoice choice)
    {
        ArgumentNullException.ThrowIfNull(work);
        return choice switch
        {
            ResitChoice.Replaces => Of(work.Counted, criterion),
            ResitChoice.Better => work.Sittings.Max(sitting => Of(sitting, criterion)),
        };
    }

    /// <summary>The mean over all works of a category; null where nothing was marked.</summary>
    public static decimal? Mean(CategoryResult category, string criterion, ResitChoice choice)
    {
        ArgumentNullException.ThrowIfNull(category);
        var shares = category.Works.Select(work => Reached(work, criterion, choice)).OfType<decimal>().ToList();
        return shares.Count == 0 ? null : shares.Sum() / shares.Count;
    }

    private static decimal? Of(SittingResult? sitting, string criterion) =>
        sitting?.Attempt.Mark.Criteria.FirstOrDefault(mark => mark.Criterion == criterion)?.Share;
}
