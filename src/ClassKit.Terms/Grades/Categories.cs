using ClassKit.Terms.Rules;

namespace ClassKit.Terms.Grades;

/// <summary>Makes one result of the works of a category.</summary>
internal static class Categories
{
    public static CategoryResult Settle(Category category, IReadOnlyList<WorkResult> works)
    {
        var counting = works.Where(work => work.Share is not null).ToList();
        var dropped = counting.OrderBy(work => work.Share).Take(Math.Min(category.DropLowest, counting.Count - 1)).ToHashSet();
        var kept = counting.Where(work => !dropped.Contains(work)).ToList();
        return new(
            category,
            [.. works.Select(work => dropped.Contains(work) ? work with { Standing = Standing.Dropped } : work)],
            kept.Count == 0 ? null : kept.Sum(work => work.Share * Weight(work, category)) / kept.Sum(work => Weight(work, category)),
            0
        );
    }

    private static decimal Weight(WorkResult work, Category category) =>
        category.Counting switch
        {
            CategoryCounting.Alike => 1,
            CategoryCounting.ByPoints => work.Assignment.Weight,
        };
}
