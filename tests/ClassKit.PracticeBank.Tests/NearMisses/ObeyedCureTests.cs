using System.Text.RegularExpressions;
using ClassKit.CellFormulas.Formulas;
using ClassKit.CellFormulas.Syntax;
using ClassKit.Grading.Findings;

namespace ClassKit.PracticeBank.Tests.NearMisses;

/// <summary>
/// Every sentence that is made of a wrong formula, over everything that ships, taken at its word. An instructor who read 840 of them found
/// 28 that lead to another wrong answer if one does what they say, and many that said the reverse of what was done.
/// </summary>
public sealed partial class ObeyedCureTests(ITestOutputHelper output)
{
    private static readonly Lazy<IReadOnlyList<ToldInFull>> Told = new(() =>
        [
            .. RehearsedSlips
                .Rehearse(SlipOfThePen.Of, "obeyed", isTyped: false)
                .Where(one => one.Grade.Findings[0] is AnswerFinding.NearMiss or AnswerFinding.NotRight or AnswerFinding.RoundsWithin)
                .Select(one => ToldInFull.Of(one.Grade, one.Desk)),
        ]
    );

    [Fact]
    public void Who_does_letter_by_letter_what_is_said_has_the_right_formula()
    {
        var obeyed = Told.Value.Where(told => told.Obeyed is not null).ToList();
        var wrong = obeyed
            .Where(told => !told.IsKey(told.Obeyed!))
            .Select(told => $"{told.Grade.Formula} {told.Obeyed}: {told.Words}")
            .ToList();

        output.WriteLine($"{obeyed.Count} of {Told.Value.Count} say what to write");
        Assert.True(wrong.Count == 0, $"{wrong.Count}:\n{string.Join('\n', wrong.Distinct().Take(20))}");
        Assert.True(obeyed.Count > 0.85 * Told.Value.Count, $"Only {obeyed.Count} of {Told.Value.Count} say what to write.");
    }

    /// <summary>The sign before a term and the side of the line on which a factor stands, brackets worked out.</summary>
    [Fact]
    public void What_is_said_to_have_been_done_with_a_cell_was_done_with_it_in_the_formula()
    {
        var read = 0;
        var untrue = new List<string>();
        foreach (var told in Told.Value.Where(told => told.Words.StartsWith("It looks as if", StringComparison.Ordinal)))
        {
            var tree = CellFormula.Of(told.Grade.Formula!).Shape;
            foreach (var (cell, done) in Done(told.Words))
            {
                read++;
                if (!In(tree, cell).Contains(done))
                    untrue.Add($"{told.Grade.Formula}: {told.Words}");
            }
        }
        output.WriteLine($"{read} operations read");
        Assert.True(read > 300, $"Only {read} were read.");
        Assert.True(untrue.Count == 0, $"{untrue.Count} of {read}:\n{string.Join('\n', untrue.Distinct().Take(20))}");
    }

    private static IEnumerable<(string Cell, string Done)> Done(string words) =>
        Was()
            .Matches(words)
            .Select(at => (at.Groups[1].Value, at.Groups[2].Value))
            .Concat(You().Matches(words).Select(at => (at.Groups[2].Value, at.Groups[1].Value)));

    /// <summary>All that is done with a cell or number in a formula.</summary>
    private static HashSet<string> In(FormulaNode node, string cell)
    {
        HashSet<string> found = [];
        Visit(node, "added", "multiplied by");
        return found;

        void Visit(FormulaNode at, string sum, string product)
        {
            if (CellFormula.OfTree(at).ToString()[1..] == cell)
                found.UnionWith([sum, product]);
            switch (at)
            {
                case BinaryNode { Operator: BinaryOperator.Add or BinaryOperator.Subtract } binary:
                    Visit(binary.Left, sum, "multiplied by");
                    Visit(binary.Right, binary.Operator == BinaryOperator.Add ? sum : Other(sum), "multiplied by");
                    break;
                case BinaryNode { Operator: BinaryOperator.Multiply or BinaryOperator.Divide } binary:
                    Visit(binary.Left, "added", product);
                    Visit(binary.Right, "added", binary.Operator == BinaryOperator.Multiply ? product : Other(product));
                    break;
                case PrefixNode { Operator: PrefixOperator.Minus } minus:
                    Visit(minus.Operand, Other(sum), product);
                    break;
                default:
                    foreach (var child in at.Children())
                        Visit(child, "added", "multiplied by");
                    break;
            }
        }
    }

    private static string Other(string done) =>
        done switch
        {
            "added" => "subtracted",
            "subtracted" => "added",
            "multiplied by" => "divided by",
            _ => "multiplied by",
        };

    [GeneratedRegex(@"(?<![\w(])(C\d+|[\d.]+)(?: \([^()]*\))? was (added|subtracted)(?! from)")]
    private static partial Regex Was();

    [GeneratedRegex(@"you (multiplied by|divided by) (C\d+|[\d.]*\d)(?![\w.*/+^-])")]
    private static partial Regex You();
}
