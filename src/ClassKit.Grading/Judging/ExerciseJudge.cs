using ClassKit.CellFormulas.Values;
using ClassKit.Exercises.Authoring;
using ClassKit.Exercises.Marking;
using ClassKit.Grading.Answers;
using ClassKit.Grading.Findings;
using ClassKit.Grading.Numbers;
using ClassKit.Grading.OnPaper;
using ClassKit.Grading.Results;

namespace ClassKit.Grading.Judging;

/// <summary>
/// Judges the parts of one exercise in a returned workbook, in order, each with the student's own earlier answers at hand, and says what
/// they earn.
/// </summary>
/// <remarks>
/// Most answers are right, or wrong, beyond doubt (<see cref="UntriedAnswers"/>); what else is a number is tried under all inputs
/// (<see cref="AnswerJudge"/>), a letter is read (<see cref="ChoiceJudge"/>), and words are kept for the instructor.
/// </remarks>
internal sealed class ExerciseJudge
{
    private readonly TriedExercise _tried;
    private readonly MarkingScheme _marking;
    private readonly UntriedAnswers _untried;
    private readonly AnswerJudge _judge;
    private readonly Dictionary<string, JudgedAnswer> _judged;

    /// <param name="tried">The exercise and what its answers are tried with.</param>
    /// <param name="marking">How outcomes become points.</param>
    public ExerciseJudge(TriedExercise tried, MarkingScheme marking)
    {
        _tried = tried;
        _marking = marking;
        _untried = new(_tried);
        _judge = new(_tried);
        _judged = new(tried.Exercise.Parts.Count);
    }

    /// <summary>What the student answered on paper; null for a workbook.</summary>
    public PaperWork? Paper { get; init; }

    private Exercise Exercise => _tried.Exercise;

    private ReturnedExercise Returned => _tried.Returned;

    /// <summary>Judges every part.</summary>
    public IReadOnlyList<AnswerGrade> Judge() => [.. Exercise.Parts.Select(JudgePart)];

    private AnswerGrade JudgePart(Part part)
    {
        if (part.InWords is not null)
            return CollectWords(part);
        if (part.Choice is not null)
            return JudgeChoice(part);
        return part.IsNumber && Paper is null && _untried.Judge(part, () => Before(part)) is var (judgement, values)
            ? GradeUntried(part, judgement, values)
            : TryAnswer(part);
    }

    private AnswerGrade GradeUntried(Part part, Judgement judgement, double[] values)
    {
        _tried.Hold(part, values);
        // While all before it were right beyond doubt there is nothing wrong to look for.
        var earlier = _judged.Count < _untried.Exact ? null : Before(part);
        IReadOnlyList<Part> origins = judgement.Outcome == Outcome.FollowThrough ? earlier!.Origins : [part];
        _judged[part.Id] = new(judgement, HoldsNumber: true, IsReached: true, IsTelling: true, origins);
        return Grade(part, judgement, CellValue.FromNumber(values[0]), Returned.Content(part)!.Formula, earlier?.Wrong ?? []);
    }

    private AnswerGrade TryAnswer(Part part)
    {
        var earlier = Before(part);
        var answer = Returned.Content(part) is { } content ? new TriedAnswer(part, content, _tried, earlier) : null;
        var judgement = answer is null ? Blank(part) : _judge.Judge(answer, earlier);
        if (WorkingFor(part) is { } working)
            judgement = OnPaperJudgement.With(working, judgement);
        Remember(part, answer, judgement, earlier);
        return Grade(part, judgement, answer?.Dealt.Value ?? CellValue.Blank, answer?.Content.Formula, earlier.Wrong);
    }

    private AnswerGrade JudgeChoice(Part part)
    {
        var earlier = Before(part);
        var evaluation = Returned.Content(part) is null ? null : Returned.Evaluate(part, _tried.Dealt);
        var (judgement, chosen) = evaluation is null
            ? (Blank(part), null)
            : ChoiceJudge.Judge(part, evaluation, _tried.Dealt, earlier, Returned.Cell(part).Cell, _tried.Rules);
        RememberNoNumber(part, judgement);
        return Grade(part, judgement, evaluation?.Value ?? CellValue.Blank, Returned.Content(part)?.Formula, earlier.Wrong) with
        {
            Chosen = chosen,
        };
    }

    /// <summary>Words are not judged. Nothing earlier is held against them, and nothing later is built on them.</summary>
    private AnswerGrade CollectWords(Part part)
    {
        var words = TypedWords.Read(Returned.Content(part));
        var judgement = words is null ? Blank(part) : Judgement.Unsupported(new AnswerFinding.Wrote(words.Length));
        RememberNoNumber(part, judgement);
        return Grade(part, judgement, words is null ? CellValue.Blank : CellValue.FromText(words.Text), null, []);
    }

    private AnswerGrade Grade(Part part, Judgement judgement, CellValue given, string? formula, IReadOnlyList<Part> wrong) =>
        new(
            Exercise,
            part,
            judgement.Outcome,
            Credit.Points(_marking, part, judgement),
            Credit.OutOf(part, judgement),
            given,
            _tried.Inputs[0].Right.Answers[part.Id],
            formula is null ? null : "=" + formula,
            judgement.Findings,
            wrong.ToDictionary(before => before.Id, _tried.OwnNumber)
        )
        {
            Paper = WorkingFor(part),
        };

    private EarlierAnswers Before(Part part) => new(part, Exercise, _judged);

    private PaperWorking? WorkingFor(Part part) => Paper?.Working(Exercise.Id, part.Id);

    private Judgement Blank(Part part) => Judgement.OfNothing(Returned.Cell(part));

    /// <summary>No formula can use a letter or a sentence, so nothing of it is kept for later parts.</summary>
    private void RememberNoNumber(Part part, Judgement judgement) =>
        _judged[part.Id] = new(judgement, HoldsNumber: false, IsReached: false, IsTelling: false, [part]);

    /// <summary>Keeps what the answer came to, for the parts after it.</summary>
    private void Remember(Part part, TriedAnswer? answer, Judgement judgement, EarlierAnswers earlier)
    {
        var isTelling =
            answer is { IsFormula: true }
            || (judgement.Reading is { } known && _tried.IsTelling(part, known))
            || (_tried.Rules.CarriesExactly && judgement.Outcome == Outcome.FollowThrough);
        var values = answer?.Values(answer.Grounds.AsItStands) ?? [];
        for (var trial = 0; trial < values.Count; trial++)
        {
            _tried
                .Trials[trial]
                .Take(part, values[trial].IsNumber ? values[trial].Number : null, judgement.Reading?.Of(values[trial], part));
        }
        var holdsNumber = values.Count > 0 && values[0].IsNumber;
        var isReached =
            answer is { IsFormula: true }
            && values.All(value => value.IsNumber)
            && values.Any(value => !Near.Computed.Same(values[0].Number, value.Number));
        IReadOnlyList<Part> origins =
            judgement.Outcome != Outcome.FollowThrough ? [part]
            : earlier.Origins is { Count: > 0 } named ? named
            : earlier.OriginsBehind(before => answer?.Uses(before) == true);
        _judged[part.Id] = new(judgement, holdsNumber, isReached, isTelling, origins);
    }
}
