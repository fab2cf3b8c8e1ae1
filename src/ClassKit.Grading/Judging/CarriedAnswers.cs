using ClassKit.CellFormulas.Evaluating;
using ClassKit.Exercises.Authoring;
using ClassKit.Exercises.Keys;
using ClassKit.Grading.Findings;
using ClassKit.Grading.Judging.Trials;
using ClassKit.Grading.Numbers;
using ClassKit.Grading.Results;

namespace ClassKit.Grading.Judging;

/// <summary>
/// Finds the answers that carry on a slip beyond doubt: plain arithmetic over the cells of givens and of earlier answers, all of them known
/// without a trial, that gives to the last bit what the key makes of them under every trial, and is not right for the numbers dealt.
/// </summary>
/// <param name="returned">What came back.</param>
/// <param name="inputs">The inputs of the trials, those dealt first.</param>
internal sealed class CarriedAnswers(ReturnedExercise returned, IReadOnlyList<TrialInputs> inputs)
{
    private readonly List<(Part Part, IReadOnlyList<Part> Behind)> _before = [];
    private readonly Dictionary<string, double>[] _own = [.. inputs.Select(_ => new Dictionary<string, double>())];

    /// <summary>Keeps an answer that was known without a trial, for those after it.</summary>
    public void Hold(Part part, double[] values)
    {
        _before.Add((part, Behind(returned.OfDealtCells(part)?.Names ?? [])));
        for (var trial = 0; trial < values.Length; trial++)
            _own[trial][part.Id] = values[trial];
    }

    /// <summary>What is found of an answer, and what it comes to under every trial; null for one of which there is doubt.</summary>
    /// <param name="part">The part.</param>
    /// <param name="before">What is known of the answers before it.</param>
    public (Judgement Judgement, double[] Values)? Of(Part part, Func<EarlierAnswers> before)
    {
        var exercise = inputs[0].Right.Exercise;
        if (
            _before.Count == 0
            || !exercise.Parts.TakeWhile(other => other != part).SequenceEqual(_before.Select(known => known.Part))
            || returned.OfDealtCells(part) is not { } formula
            || !ExactAnswers.IsPlain(formula.Root)
            || !formula.Names.All(name => IsGiven(exercise, name) || _before.Exists(known => IsCalled(known.Part.Id, name)))
        )
            return null;
        var values = new double[inputs.Count];
        for (var trial = 0; trial < values.Length; trial++)
        {
            var names = new NamedValues(KeyValues.NamesInPlace(inputs[trial].Right.Givens, _own[trial]));
            if (names.Number(formula.Root) is not { } value || names.Number(part.Key.Root) != value)
                return null;
            values[trial] = value;
        }
        var right = inputs[0].Right.Answers[part.Id];
        if (Near.Computed.AllSame(values) || CellReadings.Of(part, values[0]).Any(value => part.Tolerance.Accepts(right, value)))
            return null;
        var earlier = before();
        if (earlier.Wrong.Count == 0 || earlier.WithoutNumber.Count > 0)
            return null;
        var behind = earlier.OriginsBehind(Behind(formula.Names).Contains);
        return (
            new(
                Outcome.FollowThrough,
                Reading.Plain(values[0]),
                true,
                new AnswerFinding.FollowsThrough(behind.Count > 0 ? behind : earlier.Origins, true)
            ),
            values
        );
    }

    /// <summary>The earlier parts that stand behind some names: those that they name, and those that stand behind these.</summary>
    private List<Part> Behind(IReadOnlyCollection<string> names) =>
        [
            .. _before
                .Where(known => names.Any(name => IsCalled(known.Part.Id, name)))
                .SelectMany(known => known.Behind.Append(known.Part))
                .Distinct(),
        ];

    private static bool IsGiven(Exercise exercise, string name) => exercise.Givens.Any(given => IsCalled(given.Id, name));

    private static bool IsCalled(string id, string name) => string.Equals(id, name, StringComparison.OrdinalIgnoreCase);
}
