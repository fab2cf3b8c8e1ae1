using ClassKit.CellFormulas.Syntax;
using ClassKit.Grading.Findings.Edits;
using ClassKit.Grading.NearMisses.Places;

namespace ClassKit.Grading.NearMisses.Families;

/// <summary>
/// Rounded in between, or not as the key rounds. What rounds the answer or an earlier answer, the judge finds without a search.
/// </summary>
internal static class RoundingEdits
{
    private const int MostDecimals = 3;

    private static readonly string[] Functions = ["ROUNDUP", "ROUNDDOWN", "ROUND"];

    public static IEnumerable<Neighbour> At(Place place) =>
        place switch
        {
            { Node: CallNode call } when Functions.Contains(call.Name) => Functions
                .Where(other => other != call.Name)
                .Select(other => Of(place, call with { Name = other }))
                .Append(Of(place, call.Arguments[0])),
            { Node: BinaryNode binary, Parent: not null } when Tree.IsArithmetic(binary.Operator) => Enumerable
                .Range(0, MostDecimals)
                .Select(decimals => Of(place, Tree.Call("ROUND", binary, Tree.Number(decimals))))
                .Concat([
                    Of(place, Tree.Call("ROUNDUP", binary, Tree.Number(0))),
                    Of(place, Tree.Call("ROUNDDOWN", binary, Tree.Number(0))),
                ]),
            _ => [],
        };

    private static Neighbour Of(Place place, FormulaNode written) =>
        new(place.Put(written), EditFamily.OtherRounding, () => [new KeyEdit.OtherRounding(Tree.Text(place.Node), Tree.Text(written))]);
}
