using ClassKit.CellFormulas.Formulas;
using ClassKit.Exercises.Authoring;
using ClassKit.Exercises.Draws;
using ClassKit.Exercises.Keys;
using ClassKit.Exercises.Randomness;
using ClassKit.Exercises.Variants;
using ClassKit.Grading.Findings;
using ClassKit.Grading.Results;

namespace ClassKit.PracticeBank.Tests.NearMisses;

/// <summary>
/// A slip in one part, and whether what the grader says of it is true: by what both give for inputs that the grader never saw.
/// </summary>
internal sealed record TriedSlip(Exercise Exercise, Part Part, SlipOfThePen Slip, CellFormula Formula)
{
    private static readonly Dictionary<string, IReadOnlyList<Variant>> Unseen = [];

    /// <summary>The slips that are slips: a number on all inputs, wrong on all of them, and none that the exercise lists.</summary>
    public static IReadOnlyList<TriedSlip> Of(Exercise exercise, Part part, IEnumerable<SlipOfThePen> slips) =>
        [
            .. slips
                .DistinctBy(slip => slip.Formula)
                .Select(slip => (slip, CellFormula.Parse(slip.Formula).Formula))
                .Where(slip => slip.Formula is not null)
                .Select(slip => new TriedSlip(exercise, part, slip.slip, slip.Formula!))
                .Where(slip => slip.IsOne),
        ];

    private bool IsOne =>
        Values(Formula) is var values
        && values.All(value => value is not null)
        && values.Exists(value => !Near(values[0]!.Value, value!.Value))
        && Inputs.Zip(values).All(pair => !Part.Tolerance.Accepts(pair.First.Answers[Part.Id], pair.Second!.Value))
        && Part.Misconceptions.All(listed => !IsAlike(Values(listed.Formula), values, Part.Tolerance.Accepts));

    /// <summary>True if the grader says something of it.</summary>
    public static bool IsNamed(AnswerGrade grade) =>
        grade.Outcome is Outcome.Misconception || grade.Findings[0] is not AnswerFinding.NotRight;

    /// <summary>True if what it says is so.</summary>
    public bool IsTrue(AnswerGrade grade) =>
        grade.Findings[0] switch
        {
            AnswerFinding.NearMiss miss => CellFormula.Of(miss.Formula) is var told
                && (IsAlike(told, Near) || IsAlike(told, Part.Tolerance.Accepts)),
            AnswerFinding.WrongTurn turn => IsAlike(Values(turn.Misconception.Formula), Values(Formula), Part.Tolerance.Accepts),
            // Of a number the grader says no more than that: it is so many times what it should be, or right in another unit.
            AnswerFinding.OffByTens or AnswerFinding.OtherUnit when grade.Formula is null => true,
            AnswerFinding.OffByTens(var factor, var isTooLarge) => Inputs
                .Zip(Values(Formula))
                .All(pair =>
                    Part.Tolerance.Accepts(
                        pair.First.Answers[Part.Id],
                        isTooLarge ? pair.Second!.Value / factor : pair.Second!.Value * factor
                    )
                ),
            AnswerFinding.OtherUnit => Slip.Kind == "another unit",
            AnswerFinding.RoundsAnswer or AnswerFinding.RoundsEarlier or AnswerFinding.RoundsWithin => Slip.Kind == "rounded between",
            _ => false,
        };

    /// <summary>True if both are one wrong method: they give the same for every input.</summary>
    public bool DoesWhat(TriedSlip other) => IsAlike(Values(Formula), Values(other.Formula), Near);

    public double? Value(IReadOnlyDictionary<string, decimal> givens, IReadOnlyDictionary<string, double> answers) =>
        KeyValues.Number(Formula, KeyValues.Names(givens, answers));

    private List<double?> Values(CellFormula formula) =>
        [.. Inputs.Select(variant => KeyValues.Number(formula, KeyValues.Names(variant.Givens, variant.Answers)))];

    /// <summary>
    /// The same where the earlier answers are a little off, each by another share: half of part a is part b only as long as both are right,
    /// and who took the one did not halve the other.
    /// </summary>
    private List<double?> Apart(CellFormula formula) =>
        [
            .. Inputs.Select(
                (variant, input) =>
                    KeyValues.Number(
                        formula,
                        KeyValues.Names(
                            variant.Givens,
                            variant.Answers.Select(
                                (answer, place) =>
                                    KeyValuePair.Create(answer.Key, answer.Value * (1.02 + (0.003 * place) + (0.001 * input)))
                            )
                        )
                    )
            ),
        ];

    private bool IsAlike(CellFormula told, Func<double, double, bool> isThat) =>
        IsAlike(Values(told), Values(Formula), isThat) && IsAlike(Apart(told), Apart(Formula), isThat);

    private IReadOnlyList<Variant> Inputs
    {
        get
        {
            if (!Unseen.TryGetValue(Exercise.Id, out var known))
                Unseen[Exercise.Id] = known = new FreshInputs(Exercise, SeededDraws.For(977, "unseen", Exercise.Id)).All;
            return known;
        }
    }

    private static bool IsAlike(List<double?> one, List<double?> other, Func<double, double, bool> isThat) =>
        one.Zip(other).All(pair => pair is { First: { } first, Second: { } second } && isThat(first, second));

    private static bool Near(double one, double other) => Math.Abs(one - other) <= 1e-7 * Math.Max(1e-6, Math.Abs(one));
}
