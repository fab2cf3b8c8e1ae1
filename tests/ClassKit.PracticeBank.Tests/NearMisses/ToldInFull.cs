using System.Text.RegularExpressions;
using ClassKit.CellFormulas.Formulas;
using ClassKit.CellFormulas.Syntax;
using ClassKit.Exercises.Authoring;
using ClassKit.Exercises.Draws;
using ClassKit.Exercises.Keys;
using ClassKit.Exercises.Randomness;
using ClassKit.Exercises.Variants;
using ClassKit.Grading.Results;
using ClassKit.PracticeBank.Tests.Fillings;
using ClassKit.Wording.Answers;

namespace ClassKit.PracticeBank.Tests.NearMisses;

/// <summary>What a student reads of a formula, taken at its word: nothing here knows how the sentence was made.</summary>
/// <param name="Grade">The answer.</param>
/// <param name="Words">What is said of it.</param>
/// <param name="Names">The exercise's names by the student's cells.</param>
internal sealed partial record ToldInFull(AnswerGrade Grade, string Words, IReadOnlyDictionary<string, string> Names)
{
    private static readonly Dictionary<string, IReadOnlyList<Variant>> Unseen = [];

    public static ToldInFull Of(AnswerGrade grade, Desk desk) =>
        new(
            grade,
            FindingWords.Of(grade),
            grade
                .Exercise.Givens.Select(given => given.Id)
                .Concat(grade.Exercise.Parts.Select(part => part.Id))
                .ToDictionary(name => desk.Cell(name).Cell, name => name, StringComparer.OrdinalIgnoreCase)
        );

    /// <summary>The formula after somebody did letter by letter what the words say; null where they say nothing to write.</summary>
    public string? Obeyed =>
        Instead().Match(Words) is { Success: true } instead
            ? Grade.Formula!.Replace(instead.Groups[2].Value, instead.Groups[1].Value, StringComparison.Ordinal)
        : Where().Match(Words) is { Success: true } where
            ? Regex.Replace(
                Grade.Formula!,
                $@"(?<![\w.]){Regex.Escape(where.Groups[2].Value)}(?![\w.])",
                where.Groups[1].Value.Replace("$", "$$", StringComparison.Ordinal)
            )
        : Whole().Match(Words) is { Success: true } whole ? "=" + whole.Groups[1].Value
        : null;

    /// <summary>True if a formula over cells gives the key's answers on inputs that nobody was dealt.</summary>
    public bool IsKey(string formula) =>
        CellFormula.Parse(formula).Formula is { } parsed
        && Inputs(Grade.Exercise)
            .All(variant =>
                KeyValues.Number(CellFormula.OfTree(Named(parsed.Shape)), KeyValues.Names(variant.Givens, variant.Answers)) is { } value
                && Math.Abs(value - variant.Answers[Grade.Part.Id]) <= 1e-9 * Math.Max(1e-6, Math.Abs(variant.Answers[Grade.Part.Id]))
            );

    /// <summary>The same tree over the exercise's names.</summary>
    public FormulaNode Named(FormulaNode node) =>
        node switch
        {
            ReferenceNode reference => Names.TryGetValue(reference.First.ToString(), out var name)
                ? new NameNode(null, name, default)
                : node,
            BinaryNode binary => binary with { Left = Named(binary.Left), Right = Named(binary.Right) },
            PrefixNode prefix => prefix with { Operand = Named(prefix.Operand) },
            PercentNode percent => percent with { Operand = Named(percent.Operand) },
            CallNode call => call with { Arguments = [.. call.Arguments.Select(Named)] },
            _ => node,
        };

    private static IReadOnlyList<Variant> Inputs(Exercise exercise)
    {
        if (!Unseen.TryGetValue(exercise.Id, out var known))
            Unseen[exercise.Id] = known = new FreshInputs(exercise, SeededDraws.For(978, "obeyed", exercise.Id)).All;
        return known;
    }

    [GeneratedRegex(@" Write (\S+) instead of (\S+)\.(?: In the worked|$)")]
    private static partial Regex Instead();

    [GeneratedRegex(@" Write (\S+) where you have (\S+)\.(?: In the worked|$)")]
    private static partial Regex Where();

    [GeneratedRegex(@" Write (\S+)\.(?: In the worked|$)")]
    private static partial Regex Whole();
}
