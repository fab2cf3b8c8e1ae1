using ClassKit.CellFormulas.Syntax;
using ClassKit.Exercises.Authoring;
using ClassKit.Grading.Findings;
using ClassKit.Grading.Results;
using ClassKit.Wording.Mending;

namespace ClassKit.Wording.Answers;

/// <summary>
/// What is told of a formula that gives ten, a hundred or a thousand times too much or too little: the step that is one too many in it, or
/// that it lacks.
/// </summary>
internal static class TensWords
{
    /// <summary>What is told; null of a typed number, and of a formula in which no such step is seen.</summary>
    public static string? Of(AnswerFinding.OffByTens found, AnswerGrade answer)
    {
        if (
            answer.Formula is not { } formula
            || found is not { Formula: { } named, Cells: { } cells }
            || new FormulaShape(formula).Tree is not { } tree
        )
            return null;
        var (exercise, part, sheet) = (answer.Exercise, answer.Part, new SheetTerms(answer.Exercise, cells));
        var written = Flat.Of(sheet.Named(tree));
        if (
            PartMending.Of(exercise, part).Change(written)
                is { Change: OwnChange.TakenIn(Flat.Leaf { Node: NumberNode { Value: 100 } }, var done, _) } reading
            && done is BinaryOperator.Divide or BinaryOperator.Multiply
            && Percentages(exercise, written) is [var only]
        )
            return $"It looks as if {sheet.Term(only)} was {(done == BinaryOperator.Divide ? "divided" : "multiplied")} by 100, though a percentage counts as a fraction: 80 % as 0.80.{new MendWords(exercise, part, formula, sheet).Of(reading)}";
        return UnseenWords.Change(exercise, part, formula, tree, sheet, named) is var (what, cure) ? $"{what}.{cure}" : null;
    }

    /// <summary>
    /// The percentages that stand above the line in a product with a hundred: of one that is divided by, or that stands in a sum, nobody
    /// would say that it was multiplied.
    /// </summary>
    private static List<string> Percentages(Exercise exercise, Flat written)
    {
        var sheet = new SheetTerms(exercise, new Dictionary<string, string>());
        return
        [
            .. Products(written)
                .Where(product => product.Items.Any(item => item.Term is Flat.Leaf { Node: NumberNode { Value: 100 } }))
                .SelectMany(product => product.Items)
                .Where(item => !item.IsInverse)
                .Select(item => item.Term)
                .OfType<Flat.Leaf>()
                .Select(leaf => leaf.Node)
                .OfType<NameNode>()
                .Select(name => name.Name)
                .Distinct(StringComparer.OrdinalIgnoreCase)
                .Where(sheet.IsPercent),
        ];
    }

    private static IEnumerable<Flat.Row> Products(Flat written) =>
        written switch
        {
            Flat.Row row => row.Items.SelectMany(item => Products(item.Term)).Concat(row.IsSum ? [] : [row]),
            Flat.Call call => call.Arguments.SelectMany(Products),
            Flat.Power power => Products(power.Base).Concat(Products(power.Exponent)),
            _ => [],
        };
}
