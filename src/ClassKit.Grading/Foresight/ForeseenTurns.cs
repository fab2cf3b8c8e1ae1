using ClassKit.Exercises.Authoring;
using ClassKit.Exercises.Draws;
using ClassKit.Exercises.Randomness;
using ClassKit.Exercises.Variants;
using ClassKit.Grading.Findings.Edits;
using ClassKit.Grading.NearMisses;
using ClassKit.Grading.NearMisses.Places;
using ClassKit.Grading.Results;

namespace ClassKit.Grading.Foresight;

/// <summary>Finds before class what students may do wrong, by the edits that grading looks for afterwards.</summary>
public static class ForeseenTurns
{
    /// <summary>The likelier kinds of edit; what is rarer nobody needs to write words for.</summary>
    private const int MostForPart = 24;

    /// <summary>A number further from the right one is seen to be absurd, and its method is given up.</summary>
    private const double Believable = 3;

    /// <summary>The kinds that are proposed, the likelier first. Common practice, no source.</summary>
    private static readonly EditFamily[] Likely =
    [
        EditFamily.ShareForRest,
        EditFamily.ShareOfOtherEnd,
        EditFamily.LeftOut,
        EditFamily.OtherCell,
        EditFamily.TurnedRound,
        EditFamily.OtherOperation,
        EditFamily.OtherConstant,
        EditFamily.OtherUnit,
        EditFamily.OtherBrackets,
        EditFamily.Doubled,
    ];

    /// <summary>
    /// The unlisted wrong turns of every part that asks for a number. Of a part the likeliest of each kind come first; of one kind those
    /// whose number may be believed, and of these those that lie further from the right one.
    /// </summary>
    public static IReadOnlyList<ForeseenTurn> Of(Exercise exercise)
    {
        ArgumentNullException.ThrowIfNull(exercise);
        var inputs = new FreshInputs(exercise, SeededDraws.For(1, "foreseen", exercise.Id)).All;
        return inputs.Count == 0 ? [] : [.. exercise.Parts.Where(part => part.IsNumber).SelectMany(part => Of(exercise, part, inputs))];
    }

    private static IEnumerable<ForeseenTurn> Of(Exercise exercise, Part part, IReadOnlyList<Variant> inputs)
    {
        return new NeighbourTable(exercise, part, inputs, JudgeRules.Current, keepsHidden: true)
            .Tried.Where(tried => Likely.Contains(tried.Neighbour.Family))
            .Select(tried => (tried.Neighbour.Family, Turn: Of(exercise, part, inputs, tried.Neighbour, tried.Values)))
            .Where(one =>
                one.Turn.Edits[0] is not KeyEdit.OtherCell cell
                || (
                    UnitOf(exercise, cell.Right) == UnitOf(exercise, cell.Written)
                    && !part.Key.Names.Contains(cell.Written, StringComparer.OrdinalIgnoreCase)
                )
            )
            .GroupBy(one => one.Family)
            .SelectMany(family =>
                family
                    .OrderBy(one => one.Turn.Distance <= Believable ? 0 : 1)
                    .ThenByDescending(one => one.Turn.Distance)
                    .Select((one, place) => (one.Family, one.Turn, Place: place))
            )
            .OrderBy(one => one.Turn.IsHidden ? 0 : 1)
            .ThenBy(one => one.Place)
            .ThenBy(one => Array.IndexOf(Likely, one.Family))
            .Select(one => one.Turn)
            .Take(MostForPart);
    }

    private static Unit? UnitOf(Exercise exercise, string name) =>
        exercise.Givens.FirstOrDefault(given => given.Id == name)?.Unit ?? exercise.Parts.FirstOrDefault(part => part.Id == name)?.Unit;

    private static ForeseenTurn Of(
        Exercise exercise,
        Part part,
        IReadOnlyList<Variant> inputs,
        Neighbour neighbour,
        IReadOnlyList<double> values
    )
    {
        var pairs = inputs.Zip(values, (variant, value) => (Right: variant.Answers[part.Id], Value: value)).ToList();
        var distances = pairs
            .Select(pair => pair.Right == 0 ? double.PositiveInfinity : Math.Abs((pair.Value - pair.Right) / pair.Right))
            .Order()
            .ToList();
        return new(
            exercise,
            part,
            neighbour.Formula,
            neighbour.Edits,
            pairs.Count(pair => part.Exactness.Accepts(pair.Right, pair.Value)) / (double)pairs.Count,
            distances[distances.Count / 2]
        );
    }
}
