using ClassKit.Exercises.Authoring;
using ClassKit.Exercises.Variants;
using ClassKit.Grading.Findings;
using ClassKit.Grading.Judging.Trials;
using ClassKit.Grading.Numbers;

namespace ClassKit.Grading.Judging.Slips;

/// <summary>Finds answers that do what the key does but for rounding, of the answer or of what it is worked out from.</summary>
/// <remarks>
/// It is decided by what a formula does under all trials, and whether a rounding is allowed by all inputs drawn for the class: so it is one
/// slip with one share, whatever the numbers that a student was dealt and whether they happen to hide it.
/// </remarks>
internal sealed class RoundingFinder
{
    /// <summary>What ROUND is asked for on the way: from thousandths to hundreds.</summary>
    private static readonly decimal[] OnTheWay = [0.001m, 0.01m, 0.1m, 0.5m, 1, 5, 10, 100];

    private static readonly IReadOnlyList<Rounding> RoundingsOnTheWay =
    [
        .. from step in OnTheWay
        from direction in (RoundingDirection[])[RoundingDirection.Nearest, RoundingDirection.Up, RoundingDirection.Down]
        select new Rounding(step, direction),
    ];

    private const decimal Percent = 0.01m;

    private readonly Part _part;
    private readonly IReadOnlyList<Trial> _trials;
    private readonly IReadOnlyList<Variant> _drawn;
    private readonly Lazy<List<IReadOnlyList<Part>>> _which;

    /// <param name="part">The part.</param>
    /// <param name="trials">What the formula is tried with.</param>
    /// <param name="drawn">All inputs that are at hand for the exercise.</param>
    public RoundingFinder(Part part, IReadOnlyList<Trial> trials, IReadOnlyList<Variant> drawn) =>
        (_part, _trials, _drawn, _which) = (part, trials, drawn, new(() => Which(trials[0].Right.Exercise, part), isThreadSafe: false));

    /// <summary>True if some rounding of an answer gives a value.</summary>
    public static bool IsRounded(double right, double value) => Rounding.All.Any(rounding => IsRounded(rounding, right, value));

    /// <summary>What some rounding of right earlier answers makes of a part.</summary>
    public static IEnumerable<double> FromRounded(Part part, Variant right)
    {
        var on = new RoundedEarlier(part, right.Givens, right.Answers);
        return Which(right.Exercise, part)
            .SelectMany(rounded => RoundingsOnTheWay.Select(rounding => on.Answer(rounding, rounded)))
            .OfType<double>();
    }

    /// <summary>The slip in what a formula does; null if it rounds nothing, or no more than the part allows.</summary>
    /// <remarks>
    /// A ground on which the answer is exactly a rounding of what is right decides before one on which it is merely within the tolerance:
    /// how near the two come hangs on a student's numbers.
    /// </remarks>
    /// <param name="behaviours">What it does on every ground.</param>
    /// <param name="method">What it does on the ground on which it shows the method; null if it shows none.</param>
    /// <param name="pointsAt">The one given that it points at, and at nothing else; null for a formula that works something out.</param>
    public Slip? Find(IEnumerable<Behaviour> behaviours, Behaviour? method, Given? pointsAt)
    {
        List<Behaviour> telling = [];
        foreach (var behaviour in behaviours)
        {
            // A constant shows no method, whatever it might be rounded from; nor is anything rounded that is right to the last digit, and
            // most answers are.
            if (!behaviour.Varies || (pointsAt is not null && IsCopy(behaviour, pointsAt)))
                continue;
            if (behaviour.IsExact)
                return null;
            telling.Add(behaviour);
        }
        return telling.Select(AnswerRounding).FirstOrDefault(rounding => rounding is not null) is { } rounding
            ? OfAnswer(rounding)
            : telling
                .Where(behaviour => method is null || ReferenceEquals(behaviour.Ground, method.Ground))
                .Select(Earlier)
                .FirstOrDefault(slip => slip is not null);
    }

    /// <summary>True for a given pointed at, however its cell is read: givens are round numbers, and no rounding of anything.</summary>
    private bool IsCopy(Behaviour behaviour, Given given) =>
        new[] { 1, Percent }.Any(scale =>
            behaviour.Throughout((trial, value) => Near.Computed.Same((double)(_trials[trial].Right.Givens[given.Id] * scale), value))
        );

    /// <summary>
    /// What the answer is rounded to; with an allowed one the search ends as well, for what else fits the few trials fits them by chance.
    /// </summary>
    private static Rounding? AnswerRounding(Behaviour behaviour)
    {
        foreach (var rounding in Rounding.All)
        {
            if (IsRounded(behaviour, rounding))
                return rounding;
        }
        return null;
    }

    private static bool IsRounded(Behaviour behaviour, Rounding rounding)
    {
        for (var trial = 0; trial < behaviour.Values.Count; trial++)
        {
            if (
                behaviour.Values[trial] is not { } value
                || behaviour.Ground.Expected[trial] is not { } expected
                || !IsRounded(rounding, expected, value)
            )
                return false;
        }
        return true;
    }

    private static bool IsRounded(Rounding rounding, double right, double value) =>
        rounding.MayGoTo(right, value) && Near.Computed.Same(rounding.Of(right), value);

    private Slip? OfAnswer(Rounding rounding) => IsAllowed(variant => rounding.Of(variant.Answers[_part.Id])) ? null : SlipOf(rounding);

    private Slip? Earlier(Behaviour behaviour)
    {
        var which = _which.Value;
        if (which.Count == 0)
            return null;
        var tried = new RoundedEarlier?[_trials.Count];
        foreach (var rounding in RoundingsOnTheWay)
        {
            foreach (var rounded in which)
            {
                if (
                    !behaviour.Throughout(
                        (trial, value) => On(trial).Answer(rounding, rounded) is { } expected && Near.Computed.Same(expected, value)
                    )
                )
                    continue;
                if (rounded.Any(part => LosesIt(rounding.For(part), [.. behaviour.Ground.Earlier.Select(earlier => earlier[part.Id])])))
                    continue;
                return IsAllowed(variant => new RoundedEarlier(_part, variant.Givens, variant.Answers).Answer(rounding, rounded))
                    ? null
                    : SlipOnTheWay(rounding, rounded[0]);
            }
        }
        return null;

        // Nearly every rounding fails on the first of the trials.
        RoundedEarlier On(int trial) => tried[trial] ??= new(_part, _trials[trial].Right.Givens, behaviour.Ground.Earlier[trial]);
    }

    /// <summary>
    /// Rounded to nothing, or to one number under all trials, it is no rounding any more: a formula that leaves the earlier answer out
    /// would do the same.
    /// </summary>
    private static bool LosesIt(Rounding rounding, IReadOnlyList<double> earlier)
    {
        List<double> rounded = [.. earlier.Select(rounding.Of)];
        return rounded.Contains(0) || rounded.TrueForAll(value => value == rounded[0]);
    }

    /// <summary>The earlier answers that the key builds on: each by itself, and all of them.</summary>
    private static List<IReadOnlyList<Part>> Which(Exercise exercise, Part part)
    {
        List<Part> used =
        [
            .. exercise
                .Parts.TakeWhile(other => other != part)
                .Where(before => part.Key.Names.Contains(before.Id, StringComparer.OrdinalIgnoreCase)),
        ];
        return used.Count > 1
            ? [.. used.Select(one => (IReadOnlyList<Part>)[one]), used]
            : [.. used.Select(one => (IReadOnlyList<Part>)[one])];
    }

    private bool IsAllowed(Func<Variant, double?> rounded) =>
        _drawn.All(variant => rounded(variant) is { } value && _part.Tolerance.Accepts(variant.Answers[_part.Id], value));

    private static Slip SlipOf(Rounding rounding) =>
        new(SlipKind.Rounding, new AnswerFinding.RoundsAnswer(rounding.Step, rounding.Direction));

    private static Slip SlipOnTheWay(Rounding rounding, Part part) =>
        new(SlipKind.Rounding, new AnswerFinding.RoundsEarlier(part, rounding.For(part).Step, rounding.Direction));
}
