using System.Globalization;
using System.Xml.Linq;
using ClassKit.Exercises.Authoring;
using ClassKit.Exercises.Keys;
using ClassKit.Exercises.Texts;
using ClassKit.Exercises.Variants;
using ClassKit.ItemBanks.Expressions;
using ClassKit.ItemBanks.Vocabulary;

namespace ClassKit.ItemBanks.Items;

/// <summary>An exercise as one item whose numbers the delivering program draws anew for each student.</summary>
/// <remarks>
/// Constraints go along, and so does the promise that no wrong turn lands on the right answer. What is promised of digits and effort cannot
/// be said in the standard's terms: who needs that takes variants.
/// </remarks>
internal static class TemplateItem
{
    /// <summary>The item; null if the exercise needs something that the standard cannot express.</summary>
    /// <param name="exercise">The exercise.</param>
    /// <param name="samples">Some variants, to see whether answers can be negative: relative tolerances around them mean something else in
    /// the standard.</param>
    public static XElement? Write(Exercise exercise, IReadOnlyList<Variant> samples)
    {
        // Which option is right may follow from the numbers, and no template of the standard can say so.
        if (exercise.Parts.Any(part => part.Tolerance.IsRounding || !part.IsNumber))
            return null;
        if (
            samples is not [var sample, ..]
            || samples.Any(variant => exercise.Parts.Any(part => part.Tolerance.IsRelative && variant.Answers[part.Id] <= 0))
        )
            return null;
        var variables = exercise
            .Givens.Select(given => (given.Id, Name: Identifiers.Given(given)))
            .Concat(exercise.Parts.Select(part => (part.Id, Name: Identifiers.Answer(part))))
            .ToDictionary(variable => variable.Id, variable => variable.Name, StringComparer.OrdinalIgnoreCase);
        var writer = new ExpressionWriter(variables);
        var keys = exercise.Parts.Select(part => (Part: part, Expression: writer.Write(part.Key))).ToList();
        var constraints = exercise.Constraints.Select(writer.Write).ToList();
        var wrongTurns = exercise
            .Parts.SelectMany(part =>
                part.Misconceptions.Select(misconception =>
                    (Part: part, Misconception: misconception, Expression: writer.Write(misconception.Formula))
                )
            )
            .ToList();
        if (keys.Any(key => key.Expression is null) || constraints.Contains(null) || wrongTurns.Any(wrong => wrong.Expression is null))
            return null;

        var defaults = KeyValues.Names(sample.Givens, sample.Answers);
        var marking = new Marking(exercise, Closeness.Of, (part, misconception) =>
            (
                Scaled(Qti.Variable(Identifiers.Wrong(part, misconception)), AnswerScale.Of(part)),
                Closeness.Of(part) with
                {
                    IsOfAnySign = true,
                }
            )
        );
        return Item.Of(
            exercise.Id,
            exercise,
            exercise.Parts.Select(part => Item.Response(part, null)),
            marking,
            [
                .. exercise.Givens.SelectMany(given =>
                    new[] { (Name: Identifiers.Given(given), Scale: 1), (Name: Identifiers.Shown(given), Scale: AnswerScale.Of(given)) }
                        .DistinctBy(one => one.Name)
                        .Select(one => Declare(one.Name, (double)(sample.Givens[given.Id] * one.Scale)))
                ),
                .. exercise.Parts.Select(part => Declare(Identifiers.Answer(part), sample.Answers[part.Id])),
                .. wrongTurns.Select(wrong =>
                    Declare(Identifiers.Wrong(wrong.Part, wrong.Misconception), KeyValues.Number(wrong.Misconception.Formula, defaults))
                ),
                Qti.Of(
                    "template-processing",
                    exercise.Givens.SelectMany(Draw),
                    keys.Select(key => Set(Identifiers.Answer(key.Part), key.Expression!)),
                    wrongTurns.Select(wrong => Set(Identifiers.Wrong(wrong.Part, wrong.Misconception), wrong.Expression!)),
                    constraints.Select(constraint => Qti.Of("template-constraint", constraint)),
                    wrongTurns.Select(wrong => Qti.Of("template-constraint", Apart(wrong.Part, wrong.Misconception))),
                    exercise.Parts.Select(part =>
                        Qti.Of(
                            "set-correct-response",
                            Qti.With("identifier", Identifiers.Response(part)),
                            Scaled(Qti.Variable(Identifiers.Answer(part)), AnswerScale.Of(part))
                        )
                    )
                ),
            ],
            ItemBody.Write(
                exercise,
                given =>
                    Qti.Of(
                        "printed-variable",
                        Qti.With("identifier", Identifiers.Shown(given)),
                        Qti.With("format", string.Create(CultureInfo.InvariantCulture, $"%.{GivenText.Decimals(given)}f"))
                    ),
                list => list.Options,
                _ => null
            )
        );
    }

    /// <summary>
    /// A variable with the value that it keeps if the constraints held for no draw: the standard lets a program give up after a hundred.
    /// </summary>
    private static XElement Declare(string identifier, double? otherwise) =>
        Qti.Of(
            "template-declaration",
            Qti.With("identifier", identifier),
            Qti.With("cardinality", "single"),
            Qti.With("base-type", Qti.Float),
            otherwise is { } value ? Qti.Of("default-value", Qti.Of("value", Qti.Text(value))) : null
        );

    private static XElement Set(string identifier, XElement expression) =>
        Qti.Of("set-template-value", Qti.With("identifier", identifier), expression);

    /// <summary>From the lowest value up in whole steps.</summary>
    private static IEnumerable<XElement> Draw(Given given)
    {
        var lowest = Qti.Number((double)given.From);
        yield return Set(
            Identifiers.Given(given),
            given.IsConstant
                ? lowest
                : Qti.Of(
                    "sum",
                    lowest,
                    Qti.Of(
                        "product",
                        Qti.Number((double)given.Step),
                        Qti.Of(
                            "random-integer",
                            Qti.With("min", "0"),
                            Qti.With("max", (given.Count - 1).ToString(CultureInfo.InvariantCulture))
                        )
                    )
                )
        );
        if (AnswerScale.Of(given) != 1)
            yield return Set(Identifiers.Shown(given), Scaled(Qti.Variable(Identifiers.Given(given)), AnswerScale.Of(given)));
    }

    private static XElement Scaled(XElement value, int scale) => scale == 1 ? value : Qti.Of("product", value, Qti.Number(scale));

    /// <summary>True while the tolerances around the right answer and around a wrong turn do not meet.</summary>
    private static XElement Apart(Part part, Misconception misconception)
    {
        XElement Right() => Qti.Variable(Identifiers.Answer(part));
        XElement Wrong() => Qti.Variable(Identifiers.Wrong(part, misconception));
        var room = part.Tolerance.IsRelative
            ? Qti.Of("product", Qti.Number(part.Tolerance.Amount), Qti.Of("sum", Qti.Size(Right()), Qti.Size(Wrong())))
            : Qti.Number(2 * part.Tolerance.Amount);
        return Qti.Of("gt", Qti.Size(Qti.Of("subtract", Right(), Wrong())), room);
    }
}
