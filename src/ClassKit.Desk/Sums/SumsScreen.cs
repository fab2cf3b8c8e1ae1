using ClassKit.BenchSums;
using ClassKit.BenchSums.Catalogue;
using ClassKit.Content.Diagnostics;
using ClassKit.Desk.Serving;
using ClassKit.UseCases.Reckoning;
using ClassKit.UseCases.Running;

namespace ClassKit.Desk.Sums;

/// <summary>The computations of the trade, worked out from what is typed.</summary>
internal static class SumsScreen
{
    public static void AddTo(DeskRoutes routes)
    {
        routes.Look("sums", visit => visit.Show<SumsPage>());
        routes.Look("sums/{id}", visit => BenchSumCatalogue.Find(visit.Step("id") ?? "") is { } sum ? Show(visit, sum) : visit.Nothing());
    }

    /// <summary>A sum changes nothing, so that what was typed stands in the address: it can be kept and gone back to.</summary>
    private static Task Show(Visit visit, BenchSum sum)
    {
        var typed = sum
            .Inputs.Select(input => KeyValuePair.Create(input.Id, visit.Typed(input.Id)))
            .Where(pair => pair.Value.Length > 0)
            .ToList();
        Reading<WorkedSum>? worked = typed.Count == 0 ? null : WorkBenchSum.Run(new(sum, typed), Run.Unwatched);
        return visit.Show<SumPage>(
            (nameof(SumPage.Sum), sum),
            (nameof(SumPage.Typed), (IReadOnlyDictionary<string, string>)typed.ToDictionary()),
            (nameof(SumPage.Worked), worked)
        );
    }
}
