using ClassKit.CellFormulas.Formulas;
using ClassKit.CellFormulas.Syntax;
using ClassKit.Exercises.Authoring;
using ClassKit.Exercises.Keys;
using ClassKit.Exercises.Variants;
using ClassKit.Grading.Numbers;
using ClassKit.Grading.Results;

namespace ClassKit.Grading.Judging.Slips;

/// <summary>
/// Reads in a formula what it rounds: one that is the key but for its functions of rounding has the right method, whatever it rounds and
/// whatever numbers a student was dealt.
/// </summary>
/// <param name="drawn">All inputs drawn for the class: what a part allows is the same for everybody.</param>
/// <param name="rules">The judge's.</param>
internal sealed class RoundedFormula(IReadOnlyList<Variant> drawn, JudgeRules rules)
{
    private static readonly HashSet<string> Functions = new(StringComparer.Ordinal)
    {
        "ROUND",
        "ROUNDUP",
        "ROUNDDOWN",
        "INT",
        "TRUNC",
        "MROUND",
        "CEILING",
        "FLOOR",
        "FIXED",
    };

    /// <summary>True if a formula rounds anything.</summary>
    public static bool Rounds(CellFormula formula) => Rounds(formula.Root);

    private static bool Rounds(FormulaNode node) =>
        (node is CallNode { Arguments.Count: > 0 } call && Functions.Contains(call.Name)) || node.Children().Any(Rounds);

    /// <summary>
    /// What rounds, and what belongs there; the whole formula where the key rounds and it does not. Null where neither does, where the part allows it, and where more is wrong.
    /// </summary>
    /// <param name="part">The part.</param>
    /// <param name="formula">The formula, over the exercise's names.</param>
    public (string Written, string Right)? Find(Part part, CellFormula formula)
    {
        if (!Rounds(formula) && !(rules.AsksRounded && Rounds(part.Key)))
            return null;
        var (written, key) = (formula.Shape, part.Key.Shape);
        var calls = Calls(written).ToList();
        if (!IsMethod(Bare(written), Bare(key)) || IsAllowed(part, written))
            return null;
        // To round down where a whole packet is needed is a wrong turn that an exercise may list, and then has its author's words.
        if (part.Misconceptions.Any(listed => IsMethod(written, listed.Formula.Shape)))
            return null;
        var belongs = Calls(key).FirstOrDefault();
        if (calls.Count == 0)
            return (Text(written), Text(InPlaceOfAll(written, key)));
        foreach (var call in calls)
        {
            var right = InPlace(call, written, key);
            if (IsAllowed(part, Replaced(written, call, right)))
                return IsOfAnswer(call, written, belongs) ? null : (Text(call), Text(right));
        }
        return belongs is null ? (Text(calls[0]), Text(Bare(calls[0]))) : (Text(written), Text(key));
    }

    /// <summary>Where the key rounds its result, that rounding of what is rounded; else what is rounded as it is.</summary>
    private static FormulaNode InPlace(CallNode call, FormulaNode written, FormulaNode key) =>
        ReferenceEquals(call, written) && key is CallNode root && Functions.Contains(root.Name)
            ? root with
            {
                Arguments = [call.Arguments[0], .. root.Arguments.Skip(1)],
            }
            : call.Arguments[0];

    /// <summary>A formula that rounds nothing, rounded as the key rounds its result; the key, where that rounds on the way.</summary>
    private static FormulaNode InPlaceOfAll(FormulaNode written, FormulaNode key) =>
        key is CallNode root && Functions.Contains(root.Name) && !Calls(root.Arguments[0]).Any()
            ? root with
            {
                Arguments = [written, .. root.Arguments.Skip(1)],
            }
            : key;

    /// <summary>
    /// True for a result that is rounded where the key rounds none: of that it is told to how many decimals, wherever it was rounded.
    /// </summary>
    private static bool IsOfAnswer(CallNode call, FormulaNode written, CallNode? belongs) =>
        belongs is null && ReferenceEquals(call, written);

    /// <summary>True if a formula is the key but for what it rounds.</summary>
    public bool IsMethod(Part part, CellFormula formula) => IsMethod(Bare(formula.Shape), Bare(part.Key.Shape));

    private bool IsMethod(FormulaNode written, FormulaNode key)
    {
        var (one, other) = (CellFormula.OfTree(written), CellFormula.OfTree(key));
        return drawn.All(variant =>
            Number(one, variant) is { } value && Number(other, variant) is { } right && Near.Computed.Same(value, right)
        );
    }

    private bool IsAllowed(Part part, FormulaNode tree)
    {
        var formula = CellFormula.OfTree(tree);
        return drawn.All(variant =>
            Number(formula, variant) is { } value && rules.ToleranceOf(part).Accepts(variant.Answers[part.Id], value)
        );
    }

    private static double? Number(CellFormula formula, Variant variant) =>
        KeyValues.Number(formula, KeyValues.NamesInPlace(variant.Givens, variant.Answers));

    private static IEnumerable<CallNode> Calls(FormulaNode node) =>
        (node is CallNode { Arguments.Count: > 0 } call && Functions.Contains(call.Name) ? new[] { call } : []).Concat(
            node.Children().SelectMany(Calls)
        );

    private static FormulaNode Bare(FormulaNode node) =>
        node is CallNode { Arguments: [var rounded, ..] } call && Functions.Contains(call.Name) ? Bare(rounded) : Each(node, Bare);

    private static FormulaNode Replaced(FormulaNode node, CallNode call, FormulaNode right) =>
        ReferenceEquals(node, call) ? right : Each(node, child => Replaced(child, call, right));

    private static FormulaNode Each(FormulaNode node, Func<FormulaNode, FormulaNode> child) =>
        node switch
        {
            BinaryNode binary => binary with { Left = child(binary.Left), Right = child(binary.Right) },
            PrefixNode prefix => prefix with { Operand = child(prefix.Operand) },
            PercentNode percent => percent with { Operand = child(percent.Operand) },
            CallNode call => call with { Arguments = [.. call.Arguments.Select(child)] },
            _ => node,
        };

    private static string Text(FormulaNode node) => CellFormula.OfTree(node).ToString()[1..];
}
