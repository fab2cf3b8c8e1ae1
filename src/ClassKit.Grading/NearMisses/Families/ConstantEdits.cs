using ClassKit.CellFormulas.Syntax;
using ClassKit.Grading.Findings.Edits;
using ClassKit.Grading.NearMisses.Places;

namespace ClassKit.Grading.NearMisses.Families;

/// <summary>
/// A constant mistaken for another. Common practice, no source: half remembered (30 for 32), another power of ten, of another measure, one
/// too many or too few.
/// </summary>
internal static class ConstantEdits
{
    private static readonly Dictionary<double, double[]> Mistaken = new()
    {
        [32] = [30, 23, 35],
        [1.8] = [2, 8, 1.6],
        [9] = [5],
        [5] = [9],
        [273.15] = [237, 100, 300],
        [1] = [100, 10],
        [16] = [12, 10, 8],
        [12] = [10, 16],
        [24] = [12],
        [60] = [100],
        [100] = [1, 10, 1000],
        [1000] = [1, 10, 100],
        [10] = [1, 100],
    };

    private const double MostCounted = 12;

    public static IEnumerable<Neighbour> At(Place place) =>
        place.Node is NumberNode number
            ? Others(number.Value)
                .Select(other => new Neighbour(place.Put(Tree.Number(other)), EditFamily.OtherConstant, () =>
                    [new KeyEdit.OtherConstant(Tree.Text(number), Tree.Text(Tree.Number(other)))]
                ))
            : [];

    private static IEnumerable<double> Others(double constant) =>
        Mistaken
            .GetValueOrDefault(constant, [])
            .Concat(constant is > 1 and <= MostCounted && constant == Math.Floor(constant) ? [constant - 1, constant + 1] : [])
            .Distinct();
}
