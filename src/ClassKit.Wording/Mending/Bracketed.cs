using ClassKit.CellFormulas.Formulas;
using ClassKit.CellFormulas.Syntax;

namespace ClassKit.Wording.Mending;

/// <summary>A formula without its brackets, and what it may be with one pair or two of them: to lose some is the commonest slip there is.</summary>
internal static class Bracketed
{
    /// <summary>Where so many are joined, two pairs stand in some hundred ways.</summary>
    private const int MostForTwo = 10;
    private const int Most = 14;

    /// <summary>All that it may be, those with one pair first; none where anything but plain arithmetic joins it.</summary>
    /// <param name="written">As it is written, in order.</param>
    public static IEnumerable<Flat> Of(FormulaNode written)
    {
        List<string> words = [];
        if (!Spell(written, words) || words.Count / 2 + 1 is < 3 or > Most)
            return [];
        var operands = (words.Count / 2) + 1;
        List<(int From, int To)> pairs =
        [
            .. from first in Enumerable.Range(0, operands)
            from last in Enumerable.Range(first + 1, operands - first - 1)
            where last - first + 1 < operands
            select (first, last),
        ];
        IEnumerable<IReadOnlyList<(int From, int To)>> ways = pairs.Select(pair => (IReadOnlyList<(int, int)>)[pair]);
        if (operands <= MostForTwo)
            ways = ways.Concat(
                from one in pairs.Index()
                from other in pairs.Skip(one.Index + 1)
                where AreApartOrWithin(one.Item, other)
                select (IReadOnlyList<(int, int)>)[one.Item, other]
            );
        return ways.Select(way => Flat.Of(CellFormula.Of(With(words, way)).Shape));
    }

    private static bool AreApartOrWithin((int From, int To) one, (int From, int To) other) =>
        one.To < other.From
        || other.To < one.From
        || (one.From <= other.From && other.To <= one.To)
        || (other.From <= one.From && one.To <= other.To);

    private static string With(List<string> words, IReadOnlyList<(int From, int To)> pairs) =>
        "="
        + string.Concat(
            words.Select(
                (word, at) =>
                    at % 2 == 1
                        ? word
                        : new string('(', pairs.Count(pair => pair.From == at / 2))
                            + word
                            + new string(')', pairs.Count(pair => pair.To == at / 2))
            )
        );

    /// <summary>Operands and operators by turns; false for a sign before one of them, which would bind otherwise.</summary>
    private static bool Spell(FormulaNode node, List<string> words)
    {
        switch (node)
        {
            case BinaryNode { Operator: >= BinaryOperator.Power and <= BinaryOperator.Subtract } binary:
                if (!Spell(binary.Left, words))
                    return false;
                words.Add(Sign(binary.Operator));
                return Spell(binary.Right, words);
            case PrefixNode:
                return false;
            default:
                words.Add(CellFormula.OfTree(node).ToString()[1..]);
                return true;
        }
    }

    private static string Sign(BinaryOperator operation) =>
        operation switch
        {
            BinaryOperator.Add => "+",
            BinaryOperator.Subtract => "-",
            BinaryOperator.Multiply => "*",
            BinaryOperator.Divide => "/",
            _ => "^",
        };
}
