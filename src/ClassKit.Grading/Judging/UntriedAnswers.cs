using ClassKit.CellFormulas.Formulas;
using ClassKit.Exercises.Authoring;
using ClassKit.Grading.Findings;
using ClassKit.Grading.Judging.Trials;
using ClassKit.Grading.Results;

namespace ClassKit.Grading.Judging;

/// <summary>
/// Answers of which nothing needs to be tried in the workbook: right beyond doubt, wrong beyond doubt, or right but for a slip that they
/// carry on.
/// </summary>
internal sealed class UntriedAnswers
{
    private readonly TriedExercise _tried;
    private readonly ExactAnswers _exact;
    private readonly HopelessAnswers? _hopeless;
    private readonly CarriedAnswers _carried;

    /// <param name="tried">The exercise and what it is tried with.</param>
    public UntriedAnswers(TriedExercise tried)
    {
        _tried = tried;
        _exact = new(tried.Returned, tried.Inputs);
        _carried = new(tried.Returned, tried.Inputs);
        if (tried.Rules.OnAllInputs)
            _hopeless = new(_exact, tried.Inputs, tried.Returned.Explanations);
    }

    /// <summary>How many were right beyond doubt so far.</summary>
    public int Exact => _exact.Found.Count;

    /// <summary>What is found of an answer, and what it comes to under each trial; null for one that has to be tried.</summary>
    /// <param name="part">The part.</param>
    /// <param name="before">What is known of the answers before it.</param>
    public (Judgement Judgement, double[] Values)? Judge(Part part, Func<EarlierAnswers> before)
    {
        var found = Find(part, before);
        if (found is var (_, values))
            _carried.Hold(part, values);
        return found;
    }

    private (Judgement Judgement, double[] Values)? Find(Part part, Func<EarlierAnswers> before)
    {
        // What does to the last digit what the key does is right, with the method shown, and nothing beside.
        if (_exact.Of(part) is { } right)
            return (new(Outcome.Sound, Reading.Plain(right[0]), true, new AnswerFinding.Right()), right);
        if (_hopeless?.Of(part) is var (formula, values))
            return Wrong(part, formula, values[0]) is { } judgement ? (judgement, values) : null;
        return _carried.Of(part, before) is var (carried, own)
            ? (_tried.IsBeyondReason(part, own[0]) ? carried with { Beside = [new AnswerFinding.Impossible(own[0])] } : carried, own)
            : null;
    }

    /// <summary>What a formula is that is wrong beyond doubt; null where it may be a near miss if its cell is read as percent.</summary>
    private Judgement? Wrong(Part part, CellFormula formula, double value)
    {
        var reading = Reading.Plain(value);
        if (_tried.Rounded(part, formula) is { } rounding)
            return Judgement.OfSlip(reading, rounding, isFormula: true);
        if (new NearMissFinder(_tried.Returned, [new(_tried.Inputs[0])], _tried.Neighbours(part)).Find(formula) is { } slip)
            return Judgement.OfSlip(reading, slip, isFormula: true);
        return part.Unit.IsPercent
            ? null
            : new(
                Outcome.Incorrect,
                reading,
                false,
                new AnswerFinding.NotRight { Formula = formula.ToString(), Cells = _tried.Returned.Cells(_tried.Exercise) }
            );
    }
}
