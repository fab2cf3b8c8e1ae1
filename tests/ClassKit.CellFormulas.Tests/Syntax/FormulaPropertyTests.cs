using System.Globalization;
using ClassKit.CellFormulas.Budget;
using ClassKit.CellFormulas.Evaluating;
using ClassKit.CellFormulas.Formulas;
using ClassKit.CellFormulas.Sheets;
using ClassKit.CellFormulas.Syntax;
using ClassKit.CellFormulas.Tests.Differential;
using ClassKit.CellFormulas.Values;
using CsCheck;

namespace ClassKit.CellFormulas.Tests.Syntax;

/// <summary>What holds for every formula, tried on random ones.</summary>
public class FormulaPropertyTests
{
    private static readonly Gen<string> Formulas = Gen.Int[0, 1_000_000].Select(seed => new RandomFormulas(seed).Next(4));

    private static readonly Gen<string> Mangled = Gen.Select(
            Formulas,
            Gen.Int[0, 400],
            Gen.Int[0, 400],
            Gen.Char["()[]{}\"'#!$:,;@%^&*+-/<>=~ .0A_\u00e9\ud83d\t\0×"]
        )
        .Select(
            (formula, from, length, c) =>
            {
                from = Math.Min(from, formula.Length);
                length = length % 3 == 0 ? Math.Min(length, formula.Length - from) : 0;
                return string.Concat(formula.AsSpan(0, from), c.ToString(), formula.AsSpan(from + length));
            }
        );

    [Fact]
    public void What_is_printed_parses_to_the_same_print() =>
        Formulas.Sample(text =>
        {
            var printed = CellFormula.Of(text).ToString();
            Assert.Equal(printed, CellFormula.Of(printed).ToString());
            Assert.Equal(Tree(CellFormula.Of(text).Root), Tree(CellFormula.Of(printed).Root));
            Assert.Equal(printed, CellFormula.Of(CellFormula.Of(text).ToFileText()).ToString());
        });

    [Fact]
    public void There_and_back_again_is_no_shift() =>
        Gen.Select(Formulas, Gen.Int[0, 50], Gen.Int[0, 50])
            .Sample(
                (text, rows, columns) =>
                {
                    var formula = CellFormula.Of(text);
                    Assert.Equal(formula.ToString(), formula.Shift(rows, columns).Shift(-rows, -columns).ToString());
                }
            );

    [Fact]
    public void A_formula_shifted_with_its_cells_has_the_same_value() =>
        Gen.Select(Gen.Int[0, 1_000_000], Gen.Int[0, 30], Gen.Int[0, 30])
            .Sample(
                (seed, rows, columns) =>
                {
                    var random = new RandomFormulas(seed);
                    var cells = new Dictionary<(int Row, int Column), CellContent>();
                    random.Fill(cells);
                    var formula = CellFormula.Of(random.Next(3));

                    // What asks where a cell is, or spells one as a text, is meant to change.
                    foreach (var word in new[] { "ROW", "COLUMN", "INDIRECT", "OFFSET", "A8", "B8" })
                    {
                        if (formula.ToString().Contains(word, StringComparison.Ordinal))
                            return;
                    }

                    cells[(1, 8)] = new(CellValue.Blank, formula.ToString());
                    var moved = cells.ToDictionary(cell => (cell.Key.Row + rows, cell.Key.Column + columns), cell => cell.Value);
                    moved[(1 + rows, 8 + columns)] = new(CellValue.Blank, formula.Shift(rows, columns).ToString());
                    Assert.Equal(Value(cells, 1, 8), Value(moved, 1 + rows, 8 + columns));
                }
            );

    [Fact]
    public void Values_do_not_depend_on_the_culture()
    {
        var before = CultureInfo.CurrentCulture;
        var comma = (CultureInfo)CultureInfo.InvariantCulture.Clone();
        (comma.NumberFormat.NumberDecimalSeparator, comma.NumberFormat.NumberGroupSeparator, comma.NumberFormat.NegativeSign) = (
            ",",
            ".",
            "\u2212"
        );
        comma.DateTimeFormat.DateSeparator = ".";
        try
        {
            for (var seed = 0; seed < 500; seed++)
            {
                CultureInfo.CurrentCulture = CultureInfo.InvariantCulture;
                var (printed, value) = Compute(seed);
                CultureInfo.CurrentCulture = comma;
                Assert.Equal((printed, value), Compute(seed));
            }
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }

    [Fact]
    public void No_text_makes_the_parser_the_printers_or_the_evaluator_throw() =>
        Mangled.Sample(
            text =>
            {
                var parse = CellFormula.Parse(text);
                if (parse.Error is { } error)
                {
                    Assert.InRange(error.Position, 0, error.Text.Length);
                    Assert.NotEmpty(error.ToString());
                    return;
                }

                var formula = parse.Formula!;
                Assert.Equal(formula.ToString(), CellFormula.Of(formula.ToString()).ToString());
                _ = formula.Names;
                System.Xml.Linq.XElement.Parse(MathMl.Write(formula, _ => null));
                var cells = new Dictionary<(int Row, int Column), CellContent>();
                new RandomFormulas(1).Fill(cells);
                cells[(2, 8)] = new(CellValue.Blank, text.TrimStart('='));
                cells[(3, 8)] = new(CellValue.Blank, text.TrimStart('='), "H3:I4");
                var evaluator = new WorkbookEvaluator(
                    new([new("Sheet1", cells)], [new("r", null, "Sheet1!$A$1:$A$8"), new("x", null, "x+1")]),
                    new EvaluationLimits(Steps: 200_000)
                );
                _ = evaluator.Evaluate(new("Sheet1", 2, 8)).Dependencies.Count;
                _ = evaluator.Evaluate(new("Sheet1", 4, 9)).Dependencies.Count;
            },
            iter: 3000
        );

    private static (string Printed, CellValue Value) Compute(int seed)
    {
        var random = new RandomFormulas(seed);
        var cells = new Dictionary<(int Row, int Column), CellContent>();
        random.Fill(cells);
        var formula = CellFormula.Of(random.Next(4));
        cells[(1, 8)] = new(CellValue.Blank, formula.ToString());
        return (formula.ToString(), Value(cells, 1, 8));
    }

    private static CellValue Value(Dictionary<(int Row, int Column), CellContent> cells, int row, int column) =>
        new WorkbookEvaluator(new([new("Sheet1", cells)], [])).Evaluate(new("Sheet1", row, column)).Value;

    /// <summary>The shape of a tree, without the places where its parts stand.</summary>
    private static string Tree(FormulaNode node) =>
        node switch
        {
            BinaryNode binary => $"({Tree(binary.Left)} {binary.Operator} {Tree(binary.Right)})",
            PrefixNode prefix => $"({prefix.Operator} {Tree(prefix.Operand)})",
            PercentNode percent => $"({Tree(percent.Operand)} percent)",
            GroupNode group => $"[{Tree(group.Inner)}]",
            CallNode call => $"{call.Name}({string.Join("; ", call.Arguments.Select(Tree))})",
            ReferenceNode reference => $"{reference.Sheet}!{reference.First}:{reference.Last}",
            NumberNode number => number.Value.ToString("R", CultureInfo.InvariantCulture),
            TextNode text => $"\"{text.Value}\"",
            ArrayNode array => $"{array.Rows}x{array.Columns}{{{string.Join("; ", array.Elements)}}}",
            _ => node.GetType().Name,
        };
}
