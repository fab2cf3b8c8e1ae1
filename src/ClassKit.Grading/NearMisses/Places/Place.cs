using ClassKit.CellFormulas.Syntax;

namespace ClassKit.Grading.NearMisses.Places;

/// <summary>A node of a key's tree, and how the tree reads with another in its place.</summary>
/// <param name="Node">The node.</param>
/// <param name="Parent">The node above; null at the root.</param>
/// <param name="Put">Makes the whole tree with another node here.</param>
internal sealed record Place(FormulaNode Node, FormulaNode? Parent, Func<FormulaNode, FormulaNode> Put)
{
    /// <summary>Functions whose arguments after the first are no quantities: digits to round to.</summary>
    private static readonly HashSet<string> OneQuantity = new(StringComparer.Ordinal)
    {
        "ROUND",
        "ROUNDUP",
        "ROUNDDOWN",
        "MROUND",
        "CEILING",
        "FLOOR",
    };

    /// <summary>Every place at which somebody may slip, from the whole formula inwards.</summary>
    public static IEnumerable<Place> In(FormulaNode root) => Below(new(root, null, node => node));

    private static IEnumerable<Place> Below(Place place) => Children(place).SelectMany(Below).Prepend(place);

    private static IEnumerable<Place> Children(Place place) =>
        place.Node switch
        {
            BinaryNode binary =>
            [
                new(binary.Left, binary, node => place.Put(binary with { Left = node })),
                new(binary.Right, binary, node => place.Put(binary with { Right = node })),
            ],
            GroupNode group => [new(group.Inner, group, node => place.Put(group with { Inner = node }))],
            PrefixNode prefix => [new(prefix.Operand, prefix, node => place.Put(prefix with { Operand = node }))],
            PercentNode percent => [new(percent.Operand, percent, node => place.Put(percent with { Operand = node }))],
            CallNode call => Enumerable
                .Range(0, OneQuantity.Contains(call.Name) ? 1 : call.Arguments.Count)
                .Select(at => new Place(call.Arguments[at], call, node =>
                    place.Put(call with { Arguments = [.. call.Arguments.Select((argument, other) => other == at ? node : argument)] })
                )),
            _ => [],
        };
}
