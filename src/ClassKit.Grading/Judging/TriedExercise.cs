using ClassKit.CellFormulas.Formulas;
using ClassKit.Exercises.Authoring;
using ClassKit.Grading.Findings;
using ClassKit.Grading.Judging.Slips;
using ClassKit.Grading.Judging.Trials;
using ClassKit.Grading.NearMisses;
using ClassKit.Grading.Numbers;
using ClassKit.Grading.Results;

namespace ClassKit.Grading.Judging;

/// <summary>One exercise of a returned workbook, with what its answers are tried with.</summary>
/// <param name="exercise">The exercise as dealt.</param>
/// <param name="returned">What came back.</param>
/// <param name="inputs">The student's own numbers, then others under the same constraints.</param>
/// <param name="drawn">All inputs drawn for the class, dealt and fresh: what a part allows does not hang on a student's numbers.</param>
/// <param name="neighbours">The wrong formulas near the keys.</param>
/// <param name="rules">The judge's.</param>
internal sealed class TriedExercise(
    Exercise exercise,
    ReturnedExercise returned,
    IReadOnlyList<TrialInputs> inputs,
    DrawnInputs drawn,
    ClassNeighbours neighbours,
    JudgeRules rules
)
{
    /// <summary>
    /// A slip of a unit or of a percent sign makes a quantity a hundred or a thousand times too large; no inputs of a class differ by so
    /// much.
    /// </summary>
    private const double ManyTimes = 20;

    private readonly List<(Part Part, double[] Values)> _untried = [];
    private List<Trial>? _trials;

    /// <summary>The exercise as dealt.</summary>
    public Exercise Exercise => exercise;

    /// <summary>What came back.</summary>
    public ReturnedExercise Returned => returned;

    /// <summary>The student's own numbers, then others under the same constraints.</summary>
    public IReadOnlyList<TrialInputs> Inputs => inputs;

    /// <summary>All inputs drawn for the class, dealt and fresh.</summary>
    public DrawnInputs Drawn => drawn;

    /// <summary>The judge's rules.</summary>
    public JudgeRules Rules => rules;

    /// <summary>What answers are tried with that may be wrong, made when there is one.</summary>
    public IReadOnlyList<Trial> Trials => _trials ??= MakeTrials();

    /// <summary>The trial with the student's own numbers.</summary>
    public Trial Dealt => Trials[0];

    /// <summary>How exact an answer must be.</summary>
    public Tolerance ToleranceOf(Part part) => rules.ToleranceOf(part);

    /// <summary>True of a formula of which it has to be asked whether it is right but for what it rounds, or does not round.</summary>
    public bool MayRound(TriedAnswer answer) =>
        answer.AsWritten is { } formula
        && (RoundedFormula.Rounds(formula) || (rules.AsksRounded && RoundedFormula.Rounds(answer.Part.Key)));

    /// <summary>What a formula rounds that is right but for that; null for none.</summary>
    public Slip? Rounded(Part part, CellFormula formula) =>
        rules.ReadsRounding && new RoundedFormula(drawn.All, rules).Find(part, formula) is var (written, right)
            ? new(SlipKind.Rounding, new AnswerFinding.RoundsWithin(written, right, returned.Cells(exercise)))
            : null;

    /// <summary>True if a formula is the key but for what it rounds, on all inputs drawn for the class.</summary>
    public bool IsMethod(Part part, CellFormula formula) => new RoundedFormula(drawn.All, rules).IsMethod(part, formula);

    /// <summary>The wrong formulas near a part's key.</summary>
    public NeighbourTable Neighbours(Part part) => neighbours.Of(exercise, part);

    /// <summary>Keeps what an answer that needs no trial comes to under each, for the parts after it.</summary>
    public void Hold(Part part, double[] values)
    {
        _untried.Add((part, values));
        if (_trials is not null)
            Take(_trials, part, values);
    }

    /// <summary>The number that the cell of an earlier part holds, or what it was read as.</summary>
    public double OwnNumber(Part part) => Dealt.Held.TryGetValue(part.Id, out var held) ? held : Dealt.Meant[part.Id];

    /// <summary>True if a number says how somebody came to it, unlike a 0, a 1 or one copied from the sheet.</summary>
    public bool IsTelling(Part part, Reading reading) => TellingNumbers.Is(reading.Written(reading.Dealt), Dealt, part);

    /// <summary>True for less than nothing, and for many times as much as any inputs give, where neither can be.</summary>
    public bool IsBeyondReason(Part part, double value) =>
        drawn.Most(part) is { } most && (value < 0 || (most > 0 && value > ManyTimes * most));

    /// <summary>
    /// True if the same wrong number is typed elsewhere in the exercise as well: filled in, and not the result of any method.
    /// </summary>
    public bool IsFilledIn(Part part, double number) =>
        exercise
            .Parts.Where(other => other != part && other.IsNumber)
            .Any(other =>
                returned.Evaluate(other, Dealt) is { Value: { IsNumber: true, Number: var held } } evaluation
                && Near.Computed.Same(number, held)
                && !returned.DependsOnSheet(evaluation)
                && !ToleranceOf(other).Accepts(Dealt.Right.Answers[other.Id], held)
            );

    private List<Trial> MakeTrials()
    {
        List<Trial> trials = [.. inputs.Select(input => new Trial(input))];
        foreach (var (part, values) in _untried)
            Take(trials, part, values);
        return trials;
    }

    private static void Take(List<Trial> trials, Part part, double[] values)
    {
        for (var trial = 0; trial < values.Length; trial++)
            trials[trial].Take(part, values[trial]);
    }
}
