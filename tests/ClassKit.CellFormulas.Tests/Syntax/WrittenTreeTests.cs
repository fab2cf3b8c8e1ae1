using ClassKit.CellFormulas.Formulas;
using ClassKit.CellFormulas.Syntax;

namespace ClassKit.CellFormulas.Tests.Syntax;

/// <summary>A changed tree is read as the parser reads its text; precedence is that of ECMA-376 Part 1, 18.17.2.2.</summary>
public class WrittenTreeTests
{
    private static readonly BinaryOperator[] Operators =
    [
        BinaryOperator.Power,
        BinaryOperator.Multiply,
        BinaryOperator.Divide,
        BinaryOperator.Add,
        BinaryOperator.Subtract,
        BinaryOperator.Concatenate,
        BinaryOperator.Less,
    ];

    public static TheoryData<string> Formulas =>
        [
            "=a+b*c",
            "=a*(b+c)/d",
            "=a-b-c-d",
            "=(a-b)*(c-d)^2",
            "=-a*b+c%",
            "=ROUND(a/b+c*d,2)*(e-1)",
            "=a/(1-b)/(c+d*e)",
            "=-(a+b)^2-c",
            "=IF(a>b,a-b*c,d)+e",
        ];

    [Theory]
    [MemberData(nameof(Formulas))]
    public void Another_operator_takes_to_itself_what_it_would_if_it_were_typed(string text)
    {
        var written = CellFormula.Of(text).Root;
        var changed = Changed(written).ToList();

        Assert.NotEmpty(changed);
        Assert.All(changed, tree =>
            Assert.Equal(
                CellFormula.OfTree(CellFormula.OfWritten(tree).Shape).ToString(),
                CellFormula.OfTree(WrittenTree.Read(tree)).ToString()
            )
        );
    }

    [Theory]
    [MemberData(nameof(Formulas))]
    public void Brackets_keep_the_shape(string text)
    {
        var shape = CellFormula.Of(text).Shape;

        Assert.Equal(CellFormula.OfTree(shape).ToString(), CellFormula.OfWritten(WrittenTree.Bracketed(shape)).ToString());
    }

    private static IEnumerable<FormulaNode> Changed(FormulaNode node) =>
        node switch
        {
            BinaryNode binary => Operators
                .Select(op => binary with { Operator = op })
                .Concat(Changed(binary.Left).Select(left => binary with { Left = left }))
                .Concat(Changed(binary.Right).Select(right => binary with { Right = right })),
            GroupNode group => Changed(group.Inner).Select(inner => group with { Inner = inner }),
            PrefixNode prefix => Changed(prefix.Operand).Select(operand => prefix with { Operand = operand }),
            CallNode call => call.Arguments.SelectMany(
                (argument, at) =>
                    Changed(argument)
                        .Select(other => call with { Arguments = [.. call.Arguments.Select((one, place) => place == at ? other : one)] })
            ),
            _ => [],
        };
}
