using ClassKit.CellFormulas.Values;
using ClassKit.Exercises.Authoring;
using ClassKit.Exercises.Keys;
using ClassKit.Exercises.Variants;

namespace ClassKit.Exercises.SelfChecking;

/// <summary>Between which numbers a typed answer to a part of a variant means something.</summary>
/// <param name="Kind">What it means.</param>
/// <param name="Low">In the cell's own scale, inclusive: 65 % is 0.65.</param>
/// <param name="High">Inclusive.</param>
/// <param name="Misconception">The wrong method, of this part or carried on from an earlier one; null for the right answer.</param>
/// <param name="SlipIn">The earlier part in which the misconception was met; null unless it is carried on.</param>
public sealed record AnswerMeaning(MeaningKind Kind, double Low, double High, Misconception? Misconception, Part? SlipIn)
{
    /// <summary>Every number that is known to mean something, in the order in which they are to be tried.</summary>
    /// <param name="variant">The numbers dealt and what the keys make of them.</param>
    /// <param name="part">One of the exercise's parts.</param>
    /// <remarks>
    /// A page that judges by itself cannot work formulas out again, so that carried-on slips are those of known misconceptions.
    /// </remarks>
    public static IReadOnlyList<AnswerMeaning> Of(Variant variant, Part part)
    {
        ArgumentNullException.ThrowIfNull(variant);
        ArgumentNullException.ThrowIfNull(part);
        var right = variant.Answers[part.Id];
        return
        [
            Around(part, right, MeaningKind.Right, null, null),
            .. CarriedOn(variant, part)
                .Where(carried => !part.Exactness.Accepts(right, carried.Value))
                .Select(carried => Around(part, carried.Value, MeaningKind.CarriedOn, carried.Misconception, carried.SlipIn)),
            .. part
                .Misconceptions.Select(misconception =>
                    (
                        Misconception: misconception,
                        Value: KeyValues.Number(misconception.Formula, KeyValues.Names(variant.Givens, variant.Answers))
                    )
                )
                .Where(wrong => wrong.Value is not null)
                .Select(wrong => Around(part, wrong.Value!.Value, MeaningKind.Misconception, wrong.Misconception, null)),
        ];
    }

    private static AnswerMeaning Around(Part part, double value, MeaningKind kind, Misconception? misconception, Part? slipIn)
    {
        var (low, high) = part.Exactness.Range(value);
        return new(kind, low, high, misconception, slipIn);
    }

    private static IEnumerable<(double Value, Misconception Misconception, Part SlipIn)> CarriedOn(Variant variant, Part part)
    {
        var before = variant.Exercise.Parts.TakeWhile(other => other != part).ToList();
        foreach (var (index, slipIn) in before.Index())
        {
            foreach (var misconception in slipIn.Misconceptions)
            {
                var names = KeyValues.Names(variant.Givens, variant.Answers);
                if (KeyValues.Number(misconception.Formula, names) is not { } wrong)
                    continue;
                names[slipIn.Id] = CellValue.FromNumber(wrong);
                if (before.Skip(index + 1).All(between => Take(between, names)) && KeyValues.Number(part.Key, names) is { } carried)
                    yield return (carried, misconception, slipIn);
            }
        }
    }

    /// <summary>Answers a part from what stands before it; false if that comes to no number.</summary>
    private static bool Take(Part part, Dictionary<string, CellValue> names)
    {
        if (KeyValues.Number(part.Key, names) is not { } value)
            return false;
        names[part.Id] = CellValue.FromNumber(value);
        return true;
    }
}
