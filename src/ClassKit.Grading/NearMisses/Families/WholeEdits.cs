using ClassKit.CellFormulas.Syntax;
using ClassKit.Grading.Findings.Edits;
using ClassKit.Grading.NearMisses.Places;

namespace ClassKit.Grading.NearMisses.Families;

/// <summary>
/// Something done to the whole answer: turned upside down, its sign lost, halved or doubled, another quantity of the sheet taken in.
/// </summary>
internal static class WholeEdits
{
    private static readonly BinaryOperator[] Four =
    [
        BinaryOperator.Multiply,
        BinaryOperator.Divide,
        BinaryOperator.Add,
        BinaryOperator.Subtract,
    ];

    public static IEnumerable<Neighbour> Of(FormulaNode root, Sheet sheet)
    {
        foreach (var op in (BinaryOperator[])[BinaryOperator.Divide, BinaryOperator.Multiply])
            yield return TakenIn(root, Tree.Number(2), op, EditFamily.Doubled);
        var inverse = Tree.Binary(BinaryOperator.Divide, Tree.Number(1), root);
        yield return new(inverse, EditFamily.Inverse, () => [new KeyEdit.Inverse(Tree.Text(root), Tree.Text(inverse))]);
        var negative = new PrefixNode(PrefixOperator.Minus, root, default);
        yield return new(negative, EditFamily.OtherSign, () => [new KeyEdit.OtherSign(Tree.Text(root), Tree.Text(negative))]);
        foreach (var quantity in sheet.Quantities)
        {
            foreach (var op in Four)
                yield return TakenIn(root, Tree.Name(quantity.Id), op, EditFamily.TakenIn);
        }
    }

    private static Neighbour TakenIn(FormulaNode root, FormulaNode term, BinaryOperator op, EditFamily family)
    {
        var written = Tree.Binary(op, root, term);
        return new(written, family, () => [new KeyEdit.TakenIn(Tree.Text(root), Tree.Text(written), Tree.Text(term), op)]);
    }
}
