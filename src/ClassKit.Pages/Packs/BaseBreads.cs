using ClassKit.Lessons.Packs;

namespace ClassKit.Pages.Packs;

/// <summary>The breads as they are written: what a series changes of one stands beside it, and says nothing a second time.</summary>
internal static class BaseBreads
{
    /// <summary>True of a bread that no series changes.</summary>
    public static bool Is(LeaveningComparison compared) => compared.Bread.Place is null or { IsAsWritten: true };

    /// <summary>Those breads, in order; all of them where there is no series.</summary>
    public static IReadOnlyList<LeaveningComparison> Of(IReadOnlyList<LeaveningComparison> compared) => [.. compared.Where(Is)];

    /// <summary>Each bread as written with the breads of its series behind it, in order.</summary>
    public static IReadOnlyList<IReadOnlyList<LeaveningComparison>> WithTheirSeries(IEnumerable<LeaveningComparison> compared) =>
        [
            .. compared
                .GroupBy(each => each.Bread.Place?.OfId ?? each.Bread.Formula.Id)
                .Select(group => (IReadOnlyList<LeaveningComparison>)[.. group]),
        ];
}
