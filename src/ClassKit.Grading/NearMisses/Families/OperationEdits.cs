using ClassKit.CellFormulas.Formulas;
using ClassKit.CellFormulas.Syntax;
using ClassKit.Grading.Findings.Edits;
using ClassKit.Grading.NearMisses.Places;

namespace ClassKit.Grading.NearMisses.Families;

/// <summary>An operation taken for another, or done the wrong way round.</summary>
internal static class OperationEdits
{
    /// <summary>Another sign typed in a formula as it stands: what it takes to itself then follows the order of operations.</summary>
    public static IEnumerable<Neighbour> AsTyped(FormulaNode root) =>
        Place
            .In(WrittenTree.Bracketed(root))
            .Take(SearchBudget.Places)
            .SelectMany(place =>
                place.Node is not BinaryNode binary || !Tree.IsArithmetic(binary.Operator)
                    ? []
                    : Four.Where(op => op != binary.Operator && binary.Operator != BinaryOperator.Power)
                        .Select(other => new Neighbour(
                            WrittenTree.Read(place.Put(binary with { Operator = other })),
                            EditFamily.OtherSignTyped,
                            () =>
                                [
                                    new KeyEdit.OtherOperation(
                                        Tree.Text(binary),
                                        CellFormula.OfWritten(binary with { Operator = other }).ToString()[1..],
                                        binary.Operator,
                                        other
                                    ),
                                ]
                        ))
            );

    private static readonly BinaryOperator[] Four =
    [
        BinaryOperator.Add,
        BinaryOperator.Subtract,
        BinaryOperator.Multiply,
        BinaryOperator.Divide,
    ];

    public static IEnumerable<Neighbour> At(Place place)
    {
        if (place.Node is not BinaryNode binary || !Tree.IsArithmetic(binary.Operator))
            yield break;
        foreach (var other in binary.Operator == BinaryOperator.Power ? [BinaryOperator.Multiply] : Four.Where(op => op != binary.Operator))
        {
            var used = binary with { Operator = other };
            yield return new(place.Put(used), EditFamily.OtherOperation, () =>
                [new KeyEdit.OtherOperation(Tree.Text(binary), Tree.Text(used), binary.Operator, other)]
            );
        }
        if (binary.Operator is BinaryOperator.Add or BinaryOperator.Multiply)
            yield break;
        var turned = binary with { Left = binary.Right, Right = binary.Left };
        yield return new(place.Put(turned), EditFamily.TurnedRound, () =>
            [new KeyEdit.TurnedRound(Tree.Text(binary), Tree.Text(turned), binary.Operator)]
        );
    }
}
