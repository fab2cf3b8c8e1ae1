using ClassKit.Lessons.Authored;

namespace ClassKit.Lessons.Series;

/// <summary>Breads by name, so that one thing about every bread of a series is not said of each.</summary>
public static class SeriesTitles
{
    /// <summary>
    /// The titles in the order of the lesson; a series of which every bread is among them is one: "Yeast rolls (all ways)".
    /// </summary>
    /// <param name="some">The breads to name.</param>
    /// <param name="all">The lesson's breads, its series shared out.</param>
    public static IReadOnlyList<string> Of(IEnumerable<LessonFormula> some, IReadOnlyList<LessonFormula> all)
    {
        var named = some.ToHashSet();
        return
        [
            .. all.Where(named.Contains)
                .GroupBy(bread => bread.Place?.OfId ?? bread.Formula.Id)
                .SelectMany(series =>
                    series.First().Place is not null && series.Count() == all.Count(bread => bread.Place?.OfId == series.Key)
                        ? [$"{series.First().Formula.Title} (all ways)"]
                        : series.Select(bread => bread.Formula.Title)
                ),
        ];
    }
}
