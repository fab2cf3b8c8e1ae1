using ClassKit.CellFormulas.Calls;
using ClassKit.CellFormulas.Evaluating;
using ClassKit.CellFormulas.Formulas;
using ClassKit.CellFormulas.Syntax;
using ClassKit.CellFormulas.Tests.Support;
using ClassKit.CellFormulas.Values;

namespace ClassKit.CellFormulas.Tests.Evaluating;

/// <summary>
/// Many inputs at once give what one after the other does. The evaluation of single formulas, which the case files hold to the standard, is
/// what it is held against.
/// </summary>
public class NamedColumnsTests
{
    private static readonly IReadOnlyList<Dictionary<string, CellValue>> Inputs =
    [
        new()
        {
            ["flour"] = CellValue.FromNumber(640),
            ["loss"] = CellValue.FromNumber(0.12),
            ["zero"] = CellValue.FromNumber(3),
            ["note"] = CellValue.FromText("12"),
            ["none"] = default,
        },
        new()
        {
            ["flour"] = CellValue.FromNumber(500),
            ["loss"] = CellValue.FromNumber(0.1),
            ["zero"] = CellValue.FromNumber(0),
            ["note"] = CellValue.FromText("about"),
            ["none"] = default,
        },
        new()
        {
            ["flour"] = CellValue.FromNumber(0.3),
            ["loss"] = CellValue.FromNumber(0.2),
            ["zero"] = CellValue.FromNumber(-1),
            ["note"] = CellValue.FromText("7"),
            ["none"] = default,
        },
    ];

    public static TheoryData<string> Formulas =>
        [
            "=flour",
            "=FLOUR*(1-loss)",
            "=-flour^2",
            "=+flour%",
            "=2^-1*flour",
            "=flour/zero",
            "=1/(flour-500)",
            "=zero^0.5",
            "=zero^zero",
            "=flour+none",
            "=flour&loss",
            "=(flour>400)+1",
            "=note*2",
            "=note",
            "=none",
            "=loss+0.1-0.3",
            "=ROUND(flour*loss,1)",
            "=ROUNDUP(flour*loss,0)",
            "=ROUNDDOWN(-flour*loss,2)",
            "=ROUND(flour/zero,1)",
            "=ROUND(note,1)",
            "=ROUND(flour,0.5)",
            "=ROUND(none,1)",
            "=ROUND({1,2},1)",
            "=IF(zero>0,flour,1/0)",
            "=IFERROR(flour/zero,7)",
            "=SUM(flour,loss,note)",
            "=MAX({1,2})*flour",
            "={1,2}+flour",
            "=water*2",
            "=B5",
            "=1E300*flour*1E300",
            "=LET(x,flour,x*2)",
            "=10^400",
        ];

    [Theory]
    [MemberData(nameof(Formulas))]
    public void They_are_what_each_gives_by_itself(string text)
    {
        var formula = CellFormula.Of(text);
        var expected = Inputs.Select(input => Number(formula, input)).ToList();

        foreach (var root in (FormulaNode[])[formula.Root, formula.Shape])
        {
            var kept = new NamedColumns(Inputs);
            kept.Keep(root);

            Assert.Equal(expected.Contains(null) ? [] : expected.Cast<double>(), [.. new NamedColumns(Inputs).Numbers(root)]);
            Assert.Equal(expected.Contains(null) ? [] : expected.Cast<double>(), [.. kept.Numbers(root)]);
        }
    }

    /// <summary>All but a cell, and a sum over a text, which counts among values and not in cells.</summary>
    public static TheoryData<string> OverNames => [.. Formulas.Select(row => row.Data).Except(["=B5", "=SUM(flour,loss,note)"])];

    /// <summary>
    /// Names alone are worked out without an interpreter where they are plain: a workbook, whose cells the names stand for, is computed by
    /// one.
    /// </summary>
    [Theory]
    [MemberData(nameof(OverNames))]
    public void They_are_what_cells_of_these_names_come_to(string text)
    {
        foreach (var input in Inputs)
        {
            var book = new Book { ["C1"] = text };
            foreach (var (at, (name, value)) in input.Index())
            {
                book.Put($"A{at + 1}", new(value));
                book.Name(name, $"Sheet1!$A${at + 1}");
            }

            Assert.Equal(
                book.Evaluate("C1") is { Status: EvaluationStatus.Computed, Value: { IsNumber: true, Number: var number } } ? number : null,
                Number(CellFormula.Of(text), input)
            );
        }
    }

    [Fact]
    public void What_is_kept_stays_what_it_is_whatever_is_made_of_it()
    {
        var key = (BinaryNode)CellFormula.Of("=flour*(1-loss)-flour/3").Shape;
        var columns = new NamedColumns(Inputs);
        columns.Keep(key);

        foreach (var op in (BinaryOperator[])[BinaryOperator.Add, BinaryOperator.Multiply, BinaryOperator.Divide, BinaryOperator.Power])
        {
            foreach (
                var edited in (FormulaNode[])
                    [
                        key with
                        {
                            Operator = op,
                        },
                        key with
                        {
                            Left = key.Right,
                            Right = key.Left,
                        },
                        new PrefixNode(PrefixOperator.Minus, key.Left, default),
                        key.Left,
                        key,
                    ]
            )
            {
                var expected = Inputs.Select(input => Number(CellFormula.OfTree(edited), input)).ToList();
                Assert.Equal(expected.Contains(null) ? [] : expected.Cast<double>(), [.. columns.Numbers(edited)]);
            }
        }
    }

    [Fact]
    public void A_tree_that_takes_more_steps_than_it_may_gives_nothing()
    {
        var sum = CellFormula.Of("=" + string.Join('+', Enumerable.Repeat("flour", 50))).Root;

        Assert.Equal(3, new NamedColumns(Inputs, steps: 99).Numbers(sum).Length);
        Assert.Equal(0, new NamedColumns(Inputs, steps: 98).Numbers(sum).Length);
        Assert.Equal(0, new NamedColumns(Inputs, steps: 98).Numbers(new CallNode("ABS", [sum], default)).Length);
    }

    private static double? Number(CellFormula formula, IReadOnlyDictionary<string, CellValue> input) =>
        NamedEvaluation.Evaluate(formula, input) is { Status: EvaluationStatus.Computed, Value: { IsNumber: true, Number: var number } }
            ? number
            : null;
}
