using ClassKit.CellFormulas.Formulas;
using ClassKit.CellFormulas.Syntax;

namespace ClassKit.Wording.Mending;

/// <summary>
/// A formula as arithmetic reads it: sums and products in one row each, every term with its sign and every factor above or under the line.
/// So what was added and what was divided by is what its student sees, whatever brackets it stands in.
/// </summary>
internal abstract record Flat
{
    private Flat() { }

    /// <summary>One name, one number, or what is no arithmetic.</summary>
    /// <param name="Node">As it stands.</param>
    public sealed record Leaf(FormulaNode Node) : Flat;

    /// <summary>A sum or a product.</summary>
    /// <param name="IsSum">False for a product.</param>
    /// <param name="Items">At least one; of one row none is another row of the same kind.</param>
    public sealed record Row(bool IsSum, IReadOnlyList<Item> Items) : Flat;

    /// <summary>A power.</summary>
    /// <param name="Base">What is raised.</param>
    /// <param name="Exponent">To what.</param>
    public sealed record Power(Flat Base, Flat Exponent) : Flat;

    /// <summary>A function.</summary>
    /// <param name="Name">Such as <c>ROUND</c>.</param>
    /// <param name="Arguments">Its arguments.</param>
    public sealed record Call(string Name, IReadOnlyList<Flat> Arguments) : Flat;

    /// <summary>A term or a factor.</summary>
    /// <param name="IsInverse">True for what is subtracted or divided by.</param>
    /// <param name="Term">What it is.</param>
    public sealed record Item(bool IsInverse, Flat Term);

    /// <summary>A row in which rows of its kind have gone up; what would be a row of one is that one.</summary>
    public static Flat InRow(bool isSum, IEnumerable<Item> items)
    {
        List<Item> flat = [.. items.SelectMany(item => Up(isSum, item))];
        // A factor's minus is the product's.
        if (!isSum && flat.Exists(IsNegative))
            return InRow(
                isSum: true,
                [
                    new(
                        flat.Count(IsNegative) % 2 == 1,
                        InRow(isSum, flat.Select(item => IsNegative(item) ? item with { Term = Whole(item) } : item))
                    ),
                ]
            );
        return flat is [{ IsInverse: false, Term: var only }] ? only : new Row(isSum, flat);
    }

    private static bool IsNegative(Item item) => item.Term is Row { IsSum: true, Items: [{ IsInverse: true }] };

    private static Flat Whole(Item item) => ((Row)item.Term).Items[0].Term;

    private static IEnumerable<Item> Up(bool isSum, Item item) =>
        item.Term is Row row && row.IsSum == isSum
            ? row.Items.Select(inner => inner with { IsInverse = inner.IsInverse != item.IsInverse })
            : [item];

    /// <summary>The formula of a tree.</summary>
    /// <param name="node">The tree, without brackets.</param>
    public static Flat Of(FormulaNode node) =>
        node switch
        {
            BinaryNode { Operator: BinaryOperator.Add or BinaryOperator.Subtract } sum => InRow(
                isSum: true,
                [new(false, Of(sum.Left)), new(sum.Operator == BinaryOperator.Subtract, Of(sum.Right))]
            ),
            BinaryNode { Operator: BinaryOperator.Multiply or BinaryOperator.Divide } product => InRow(
                isSum: false,
                [new(false, Of(product.Left)), new(product.Operator == BinaryOperator.Divide, Of(product.Right))]
            ),
            BinaryNode { Operator: BinaryOperator.Power } power => new Power(Of(power.Left), Of(power.Right)),
            PrefixNode { Operator: PrefixOperator.Minus } minus => InRow(isSum: true, [new(true, Of(minus.Operand))]),
            PrefixNode { Operator: PrefixOperator.Plus } plus => Of(plus.Operand),
            CallNode call => new Call(call.Name, [.. call.Arguments.Select(Of)]),
            _ => new Leaf(node),
        };

    /// <summary>The tree again.</summary>
    /// <param name="isGrouped">True to write <c>a/(b*c)</c> and <c>a-(b+c)</c>, false for <c>a/b/c</c> and <c>a-b-c</c>.</param>
    public FormulaNode Tree(bool isGrouped) =>
        this switch
        {
            Leaf leaf => leaf.Node,
            Power power => new BinaryNode(BinaryOperator.Power, power.Base.Tree(isGrouped), power.Exponent.Tree(isGrouped), default),
            Call call => new CallNode(call.Name, [.. call.Arguments.Select(argument => argument.Tree(isGrouped))], default),
            Row row => TreeOf(row, isGrouped),
            _ => throw new System.Diagnostics.UnreachableException(),
        };

    private static FormulaNode TreeOf(Row row, bool isGrouped)
    {
        var (forth, back) = row.IsSum ? (BinaryOperator.Add, BinaryOperator.Subtract) : (BinaryOperator.Multiply, BinaryOperator.Divide);
        List<Item> items = [.. row.Items];
        // What begins with what is taken away is easier read from its first other item.
        if (items[0].IsInverse && items.Find(item => !item.IsInverse) is { } first)
        {
            items.Remove(first);
            items.Insert(0, first);
        }
        var at = 1;
        FormulaNode tree = items[0].Term.Tree(isGrouped);
        if (items[0].IsInverse)
            tree = row.IsSum
                ? new PrefixNode(PrefixOperator.Minus, tree, default)
                : new BinaryNode(BinaryOperator.Divide, new NumberNode(1, default), tree, default);
        while (at < items.Count)
        {
            var end = at + 1;
            while (isGrouped && items[at].IsInverse && end < items.Count && items[end].IsInverse)
                end++;
            FormulaNode next = items[at].Term.Tree(isGrouped);
            for (var more = at + 1; more < end; more++)
                next = new BinaryNode(forth, next, items[more].Term.Tree(isGrouped), default);
            tree = new BinaryNode(items[at].IsInverse ? back : forth, tree, next, default);
            at = end;
        }
        return tree;
    }

    /// <summary>What two formulas have in common that are one but for the order of their terms and factors.</summary>
    public string Sorted => InOneLine(isSorted: true);

    /// <summary>What no two different formulas have in common.</summary>
    public string Spelled => InOneLine(isSorted: false);

    private string InOneLine(bool isSorted) =>
        this switch
        {
            Leaf leaf => OfTree(leaf.Node).ToUpperInvariant(),
            Power power => $"({power.Base.InOneLine(isSorted)}^{power.Exponent.InOneLine(isSorted)})",
            Call call => $"{call.Name}({string.Join(',', call.Arguments.Select(argument => argument.InOneLine(isSorted)))})",
            Row row => $"({string.Concat(InOneLine(row, isSorted))})",
            _ => throw new System.Diagnostics.UnreachableException(),
        };

    private static IEnumerable<string> InOneLine(Row row, bool isSorted)
    {
        var items = row.Items.Select(item => (item.IsInverse ? Back(row) : Forth(row)) + item.Term.InOneLine(isSorted));
        return isSorted ? items.Order(StringComparer.Ordinal) : items;
    }

    private static char Forth(Row row) => row.IsSum ? '+' : '*';

    private static char Back(Row row) => row.IsSum ? '-' : '/';

    /// <summary>Every piece with what becomes of the whole if another stands in its place; the whole first.</summary>
    public IEnumerable<(Flat Piece, Func<Flat, Flat> Whole)> Places()
    {
        yield return (this, piece => piece);
        switch (this)
        {
            case Row row:
                foreach (var (at, item) in row.Items.Index())
                {
                    foreach (var (piece, whole) in item.Term.Places())
                        yield return (piece, other =>
                            InRow(row.IsSum, row.Items.Select((own, place) => place == at ? own with { Term = whole(other) } : own))
                        );
                }
                break;
            case Power power:
                foreach (var (piece, whole) in power.Base.Places())
                    yield return (piece, other => power with { Base = whole(other) });
                foreach (var (piece, whole) in power.Exponent.Places())
                    yield return (piece, other => power with { Exponent = whole(other) });
                break;
            case Call call:
                foreach (var (at, argument) in call.Arguments.Index())
                {
                    foreach (var (piece, whole) in argument.Places())
                        yield return (piece, other =>
                            call with
                            {
                                Arguments = [.. call.Arguments.Select((own, place) => place == at ? whole(other) : own)],
                            }
                        );
                }
                break;
        }
    }

    /// <summary>Its names and numbers.</summary>
    public IEnumerable<Leaf> Leaves() => Places().Select(place => place.Piece).OfType<Leaf>();

    /// <summary>As it is written over names, without <c>=</c>.</summary>
    public string Text(bool isGrouped = true) => OfTree(Tree(isGrouped));

    private static string OfTree(FormulaNode node) => CellFormula.OfTree(node).ToString()[1..];
}
