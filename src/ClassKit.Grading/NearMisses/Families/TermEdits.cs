using ClassKit.CellFormulas.Syntax;
using ClassKit.Grading.Findings.Edits;
using ClassKit.Grading.NearMisses.Places;

namespace ClassKit.Grading.NearMisses.Families;

/// <summary>A term, a factor or a divisor left out, or taken twice.</summary>
internal static class TermEdits
{
    /// <param name="place">Where.</param>
    /// <param name="twice">True for those that are taken twice as well.</param>
    public static IReadOnlyList<Neighbour> At(Place place, bool twice)
    {
        if (place.Node is not BinaryNode binary || !Tree.IsArithmetic(binary.Operator))
            return [];
        var second = Without(place, binary, binary.Left, binary.Right);
        if (binary.Operator == BinaryOperator.Power)
            return [second];
        var first = Without(place, binary, binary.Right, binary.Left);
        return twice
            ?
            [
                second,
                first,
                Twice(place, binary, binary.Right, binary.Operator),
                Twice(
                    place,
                    binary,
                    binary.Left,
                    binary.Operator is BinaryOperator.Add or BinaryOperator.Subtract ? BinaryOperator.Add : BinaryOperator.Multiply
                ),
            ]
            : [second, first];
    }

    /// <summary>What is worked out in as many steps is more than a term.</summary>
    private const int Much = 2;

    private static Neighbour Without(Place place, BinaryNode binary, FormulaNode kept, FormulaNode term) =>
        new(place.Put(kept), EditFamily.LeftOut, () =>
            [new KeyEdit.LeftOut(Tree.Text(binary), Tree.Text(kept), Tree.Text(term), OperationOf(binary, term))]
        )
        {
            LosesMuch = Tree.Operations(term) >= Much,
        };

    /// <summary>What the key does with a term: with the first of two it begins, so that it adds or multiplies it.</summary>
    private static BinaryOperator OperationOf(BinaryNode binary, FormulaNode term) =>
        ReferenceEquals(term, binary.Right) ? binary.Operator
        : binary.Operator is BinaryOperator.Add or BinaryOperator.Subtract ? BinaryOperator.Add
        : BinaryOperator.Multiply;

    private static Neighbour Twice(Place place, BinaryNode binary, FormulaNode term, BinaryOperator op)
    {
        var more = Tree.Binary(op, binary, term);
        return new(place.Put(more), EditFamily.CountedTwice, () =>
            [new KeyEdit.CountedTwice(Tree.Text(binary), Tree.Text(more), Tree.Text(term))]
        );
    }
}
