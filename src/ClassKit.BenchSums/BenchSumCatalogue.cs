using ClassKit.BenchSums.Catalogue;
using ClassKit.BenchSums.Sums;

namespace ClassKit.BenchSums;

/// <summary>Every bench sum, by topic and in the order in which it is offered.</summary>
public static class BenchSumCatalogue
{
    /// <summary>All of them.</summary>
    public static IReadOnlyList<BenchSum> All { get; } =
    [
        .. ScalingSums.All,
        .. DoughTemperatureSums.All,
        .. YeastSums.All,
        .. ChemicalSums.All,
        .. GasSums.All,
        .. MeasureSums.All,
        .. CostSums.All,
        .. SafetySums.All,
    ];

    /// <summary>The sum of an id; null if there is none.</summary>
    public static BenchSum? Find(string id) => All.FirstOrDefault(sum => sum.Id.Equals(id, StringComparison.OrdinalIgnoreCase));
}
