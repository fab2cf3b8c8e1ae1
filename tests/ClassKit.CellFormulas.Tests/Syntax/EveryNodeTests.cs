using ClassKit.CellFormulas.Evaluating;
using ClassKit.CellFormulas.Formulas;
using ClassKit.CellFormulas.Syntax;
using ClassKit.CellFormulas.Tests.Support;
using ClassKit.CellFormulas.Values;

namespace ClassKit.CellFormulas.Tests.Syntax;

/// <summary>
/// Whoever walks a syntax tree knows every kind of node: a new one fails here until it is evaluated, printed, typeset and copied.
/// </summary>
public class EveryNodeTests
{
    private static readonly Dictionary<Type, string> Examples = new()
    {
        [typeof(ArrayNode)] = "={1,2;3,4}",
        [typeof(BinaryNode)] = "=1+2",
        [typeof(CallNode)] = "=SUM(1,2)",
        [typeof(ErrorNode)] = "=#N/A",
        [typeof(GroupNode)] = "=(1)",
        [typeof(LogicalNode)] = "=TRUE",
        [typeof(MissingNode)] = "=ROUND(2.5,)",
        [typeof(NameNode)] = "=flour",
        [typeof(NumberNode)] = "=1",
        [typeof(PercentNode)] = "=65%",
        [typeof(PrefixNode)] = "=-1",
        [typeof(ReferenceNode)] = "=$B5",
        [typeof(SpillNode)] = "=B5#",
        [typeof(TableNode)] = "=Sales[Amount]",
        [typeof(TextNode)] = "=\"flour\"",
        [typeof(UnsupportedNode)] = "=LAMBDA(x,x)",
    };

    public static TheoryData<string> Formulas => [.. Examples.Values];

    [Fact]
    public void Every_kind_of_node_has_an_example() =>
        Assert.Equal(
            typeof(FormulaNode)
                .Assembly.GetTypes()
                .Where(type => type.IsSubclassOf(typeof(FormulaNode)))
                .Select(type => type.Name)
                .Order(StringComparer.Ordinal),
            Examples.Keys.Select(type => type.Name).Order(StringComparer.Ordinal)
        );

    [Fact]
    public void Every_example_has_its_node() =>
        Assert.All(Examples, example => Assert.Contains(All(CellFormula.Of(example.Value).Root), node => node.GetType() == example.Key));

    [Theory]
    [MemberData(nameof(Formulas))]
    public void Every_walker_knows_it(string text)
    {
        var formula = CellFormula.Of(text);

        new Book { ["A1"] = text }.Evaluate("A1");
        NamedEvaluation.Evaluate(formula, new Dictionary<string, CellValue>());
        Assert.Equal(text, formula.ToString());
        Assert.NotEmpty(formula.ToFileText());
        Assert.NotEmpty(MathMl.Write(formula, _ => null));
        Assert.Equal(text, formula.Shift(0, 0).ToString());
        Assert.Equal(text, formula.ReplaceNames(_ => null).ToString());
        Assert.Equal(text == "=flour" ? ["flour"] : [], formula.Names);
    }

    private static IEnumerable<FormulaNode> All(FormulaNode node) => node.Children().SelectMany(All).Prepend(node);
}
