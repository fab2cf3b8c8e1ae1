using System.Globalization;
using ClassKit.CellFormulas.Calls;
using ClassKit.CellFormulas.Formulas;
using ClassKit.CellFormulas.Values;
using ClassKit.Exercises.Authoring;
using ClassKit.Exercises.Marking;
using ClassKit.Exercises.Variants;
using ClassKit.Grading.Answers;
using ClassKit.Grading.Findings;
using ClassKit.Grading.Judging.Slips;
using ClassKit.Grading.Judging.Trials;
using ClassKit.Grading.NearMisses;
using ClassKit.Grading.OnPaper;
using ClassKit.Grading.Results;

namespace ClassKit.Grading.Judging;

/// <summary>
/// Judges the parts of one exercise in a returned workbook, in order, each with the student's own earlier answers at hand.
/// </summary>
/// <remarks>First what an answer shows is gathered (<see cref="Evidence"/>), then the kindest finding that it bears out is taken.</remarks>
internal sealed class ExerciseJudge
{
    /// <summary>
    /// A slip of a unit or of a percent sign makes a quantity a hundred or a thousand times too large; no inputs of a class differ by so
    /// much.
    /// </summary>
    private const double ManyTimes = 20;

    private readonly Exercise _exercise;
    private readonly ReturnedExercise _returned;
    private readonly MarkingScheme _marking;
    private readonly IReadOnlyList<TrialInputs> _inputs;
    private readonly ExactAnswers _exact;
    private readonly HopelessAnswers? _hopeless;
    private readonly List<(Part Part, double[] Values)> _untried = [];
    private readonly DrawnInputs _drawn;
    private readonly ClassNeighbours? _neighbours;
    private readonly Dictionary<string, JudgedAnswer> _judged;
    private IReadOnlyList<Trial>? _trials;

    /// <param name="exercise">The exercise as dealt.</param>
    /// <param name="returned">What came back.</param>
    /// <param name="marking">How outcomes become points.</param>
    /// <param name="dealt">The student's own variant.</param>
    /// <param name="fresh">Other inputs under the same constraints, to try the answers with.</param>
    /// <param name="drawn">All inputs drawn for the class, dealt and fresh: what a part allows does not hang on a student's
    /// numbers.</param>
    /// <param name="neighbours">The wrong formulas near the keys; null to look for none.</param>
    public ExerciseJudge(
        Exercise exercise,
        ReturnedExercise returned,
        MarkingScheme marking,
        Variant dealt,
        IReadOnlyList<TrialInputs> fresh,
        DrawnInputs drawn,
        ClassNeighbours? neighbours
    )
    {
        _exercise = exercise;
        _judged = new(exercise.Parts.Count);
        _returned = returned;
        _marking = marking;
        _inputs = [new(dealt), .. fresh];
        _exact = new(returned, _inputs);
        _drawn = drawn;
        _neighbours = neighbours;
        if (neighbours is { OnAll: true })
            _hopeless = new(_exact, _inputs, returned.Explanations);
    }

    /// <summary>What the student answered on paper; null for a workbook.</summary>
    public PaperWork? Paper { get; init; }

    /// <summary>What answers are tried with that may be wrong, made when there is one.</summary>
    private IReadOnlyList<Trial> Trials => _trials ??= MakeTrials();

    private Trial Dealt => Trials[0];

    /// <summary>
    /// True if what follows from own answers is held to a tolerance in proportion: so it is since near misses are looked for, and records
    /// of before are judged as they were.
    /// </summary>
    private bool InProportion => _neighbours is not null;

    private List<Trial> MakeTrials()
    {
        List<Trial> trials = [.. _inputs.Select(inputs => new Trial(inputs))];
        foreach (var (part, values) in _untried)
            Take(trials, part, values);
        return trials;
    }

    private static void Take(IReadOnlyList<Trial> trials, Part part, double[] values)
    {
        for (var trial = 0; trial < values.Length; trial++)
            trials[trial].Take(part, values[trial]);
    }

    /// <summary>Judges every part.</summary>
    public IReadOnlyList<AnswerGrade> Judge() => [.. _exercise.Parts.Select(JudgePart)];

    private AnswerGrade JudgePart(Part part)
    {
        if (part.IsNumber && Paper is null && Untried(part) is { } grade)
            return grade;
        var earlier = new EarlierAnswers(part, _exercise, _judged);
        if (part.InWords is not null)
            return CollectWords(part);
        if (part.Choice is not null)
            return JudgeChoice(part, earlier);
        var answer = _returned.Content(part) is { } content
            ? new TriedAnswer(part, content, _returned, Trials, earlier, InProportion)
            : null;
        var judgement = OnPaper(part, answer is null ? Blank(part) : Judge(answer, earlier));
        Remember(part, answer, judgement, earlier);
        return new AnswerGrade(
            _exercise,
            part,
            judgement.Outcome,
            Credit.Points(_marking, part, judgement),
            Credit.OutOf(part, judgement),
            answer?.Dealt.Value ?? CellValue.Blank,
            Dealt.Right.Answers[part.Id],
            answer?.Content.Formula is { } formula ? "=" + formula : null,
            judgement.Findings,
            earlier.Wrong.ToDictionary(before => before.Id, OwnNumber)
        )
        {
            Paper = WorkingFor(part),
        };
    }

    /// <summary>What an answer is of which nothing needs to be tried in the workbook; null for any other.</summary>
    private AnswerGrade? Untried(Part part)
    {
        // What does to the last digit what the key does is right, with the method shown, and nothing beside.
        if (_exact.Of(part) is { } right)
            return Untried(part, right, new(Outcome.Sound, new(0, false, right[0]), true, new AnswerFinding.Right()));
        return _hopeless?.Of(part) is var (formula, values) && Hopeless(part, formula, values[0]) is { } judgement
            ? Untried(part, values, judgement)
            : null;
    }

    /// <summary>What a formula is that is wrong beyond doubt; null where it may be a near miss if its cell is read as percent.</summary>
    private Judgement? Hopeless(Part part, CellFormula formula, double value)
    {
        var reading = new Reading(0, false, value);
        if (new NearMissFinder(_returned, [new(_inputs[0])], _neighbours!.Of(_exercise, part)).Find(formula) is { } slip)
            return OfSlip(reading, slip, isFormula: true);
        return AnswerUnit.IsPercent(part.Unit)
            ? null
            : new(Outcome.Incorrect, reading, false, new AnswerFinding.NotRight { Formula = formula.ToString() });
    }

    private AnswerGrade Untried(Part part, double[] values, Judgement judgement)
    {
        _untried.Add((part, values));
        if (_trials is not null)
            Take(_trials, part, values);
        var wrong = _judged.Count < _exact.Found.Count ? [] : new EarlierAnswers(part, _exercise, _judged).Wrong;
        _judged[part.Id] = new(judgement, HoldsNumber: true, IsReached: true, IsTelling: true, [part]);
        return new(
            _exercise,
            part,
            judgement.Outcome,
            Credit.Points(_marking, part, judgement),
            Credit.OutOf(part, judgement),
            CellValue.FromNumber(values[0]),
            _inputs[0].Right.Answers[part.Id],
            "=" + _returned.Content(part)!.Formula,
            judgement.Findings,
            wrong.ToDictionary(before => before.Id, OwnNumber)
        );
    }

    private PaperWorking? WorkingFor(Part part) => Paper?.Working(_exercise.Id, part.Id);

    /// <summary>
    /// The same for an answer on paper: no cell waits for a percentage, and working that the instructor saw shows the method as a formula
    /// would.
    /// </summary>
    private Judgement OnPaper(Part part, Judgement judgement)
    {
        if (WorkingFor(part) is not { } working)
            return judgement;
        judgement = judgement with { Beside = [.. judgement.Beside.Where(finding => finding is not AnswerFinding.HundredfoldPercent)] };
        if (working == PaperWorking.NotSeen)
            return judgement;
        judgement = judgement with { MethodShown = true, WorkingSeen = true };
        return judgement switch
        {
            { Outcome: Outcome.ValueOnly } => judgement with { Outcome = Outcome.Sound, Finding = new AnswerFinding.Right() },
            { Finding: AnswerFinding.FollowsThrough follows } => judgement with { Finding = follows with { MethodShown = true } },
            _ => judgement,
        };
    }

    private AnswerGrade JudgeChoice(Part part, EarlierAnswers earlier)
    {
        var evaluation = _returned.Content(part) is null ? null : _returned.Evaluate(part, Dealt);
        var (judgement, chosen) = evaluation is null
            ? (Blank(part), null)
            : ChoiceJudge.Judge(part, evaluation, Dealt, earlier, _returned.Cell(part).Cell);
        // No formula can use a letter, so nothing of it is kept for later parts.
        _judged[part.Id] = new(judgement, HoldsNumber: false, IsReached: false, IsTelling: false, [part]);
        return new(
            _exercise,
            part,
            judgement.Outcome,
            Credit.Points(_marking, part, judgement),
            Credit.OutOf(part, judgement),
            evaluation?.Value ?? CellValue.Blank,
            Dealt.Right.Answers[part.Id],
            _returned.Content(part)?.Formula is { } formula ? "=" + formula : null,
            judgement.Findings,
            earlier.Wrong.ToDictionary(before => before.Id, OwnNumber)
        )
        {
            Chosen = chosen,
            Paper = WorkingFor(part),
        };
    }

    /// <summary>Words are not judged. Nothing earlier is held against them, and nothing later is built on them.</summary>
    private AnswerGrade CollectWords(Part part)
    {
        var words = TypedWords.Read(_returned.Content(part));
        var judgement = words is null ? Blank(part) : new(Outcome.Unsupported, null, false, new AnswerFinding.Wrote(words.Length));
        _judged[part.Id] = new(judgement, HoldsNumber: false, IsReached: false, IsTelling: false, [part]);
        return new(
            _exercise,
            part,
            judgement.Outcome,
            Credit.Points(_marking, part, judgement),
            Credit.OutOf(part, judgement),
            words is null ? CellValue.Blank : CellValue.FromText(words.Text),
            _inputs[0].Right.Answers[part.Id],
            null,
            judgement.Findings,
            new Dictionary<string, double>()
        )
        {
            Paper = WorkingFor(part),
        };
    }

    private double OwnNumber(Part part) => Dealt.Held.TryGetValue(part.Id, out var held) ? held : Dealt.Meant[part.Id];

    private Judgement Blank(Part part) => new(Outcome.Blank, null, false, new AnswerFinding.Empty(_returned.Cell(part).Cell));

    private Judgement Judge(TriedAnswer answer, EarlierAnswers earlier)
    {
        if (answer.Dealt.Status != EvaluationStatus.Computed)
            return new(Outcome.Unsupported, null, false, new AnswerFinding.NotEvaluated(answer.Dealt.Reason!));
        var evidence = answer.ReadingsOn(answer.AsItStands).Select(reading => EvidenceOf(answer, earlier, reading)).ToList();
        var judgement = Verdict(answer, earlier, evidence);
        return judgement with { Beside = [.. Beside(answer, judgement)] };
    }

    /// <summary>The one ordered decision: the kindest finding that the evidence bears out.</summary>
    private Judgement Verdict(TriedAnswer answer, EarlierAnswers earlier, List<Evidence> evidence) =>
        FirstOf(evidence, one => AsRight(answer, one))
        ?? FirstOf(evidence, one => AsFollowThrough(answer, earlier, one))
        ?? AsRightMethod(answer, earlier)
        ?? FirstOf(evidence, one => AsMisconception(answer, earlier, one.Reading))
        ?? (evidence.Count > 0 ? AsIncorrect(answer, earlier, evidence) : AsNoNumber(answer));

    private Evidence EvidenceOf(TriedAnswer answer, EarlierAnswers earlier, Reading reading)
    {
        double? Meant() => Dealt.Number(answer.Part.Key, Dealt.MeantBefore(answer.Part));
        var isRight =
            Accepts(answer.Part, Dealt.Right.Answers[answer.Part.Id], reading.Dealt)
            || (earlier.AreRight && Accepts(answer.Part, Meant(), reading.Dealt));
        var followsOwn =
            !isRight
            && earlier.Wrong.Count > 0
            && (
                FollowsFrom(answer, Dealt.Number(answer.Part.Key, Dealt.HeldBefore(answer.Part)), reading.Dealt)
                || FollowsFrom(answer, Meant(), reading.Dealt)
            );
        var method = Method(answer, reading);
        return new(reading, isRight, followsOwn, method, () => RoundingIn(answer, reading, method));
    }

    private bool FollowsFrom(TriedAnswer answer, double? own, double value) =>
        InProportion
            ? OwnAllowance.Accepts(answer.Part.Tolerance, own, Dealt.Right.Answers[answer.Part.Id], value, !answer.IsFormula)
            : Accepts(answer.Part, own, value);

    /// <summary>
    /// The first ground on which the answer does what the key does under all trials. A constant does not, nor does a formula that hides a
    /// typed given in the tolerance.
    /// </summary>
    private Behaviour? Method(TriedAnswer answer, Reading reading) =>
        !answer.IsFormula || answer.IsTextOfFormula
            ? null
            : answer
                .Grounds.Select(ground => answer.On(ground, reading))
                .FirstOrDefault(behaviour =>
                    behaviour.IsRight(answer.Part) && behaviour.Varies && !TypedGivens.AreHiddenByTolerance(behaviour, answer.Part, Trials)
                );

    /// <summary>
    /// What rounds more than the part allows: in the method that was shown, or else in what comes near one on any ground.
    /// </summary>
    private Slip? RoundingIn(TriedAnswer answer, Reading reading, Behaviour? method)
    {
        if (!answer.IsFormula || answer.IsTextOfFormula)
            return null;
        return new RoundingFinder(answer.Part, Trials, _drawn.All).Find(
            answer.Grounds.Select(ground => answer.On(ground, reading)),
            method,
            answer.PointsAt
        );
    }

    private Judgement? AsRight(TriedAnswer answer, Evidence evidence)
    {
        if (!evidence.IsRight)
            return null;
        if (evidence.Rounding is { } rounding)
            return OfSlip(evidence.Reading, rounding, isFormula: true);
        return evidence.ShowsMethod
            ? new(Outcome.Sound, evidence.Reading, true, new AnswerFinding.Right())
            : new(Outcome.ValueOnly, evidence.Reading, false, NumberOnly(answer, evidence.Reading));
    }

    private AnswerFinding NumberOnly(TriedAnswer answer, Reading reading)
    {
        if (answer.IsTextOfFormula)
            return new AnswerFinding.RightInText();
        if (!answer.IsFormula)
            return new AnswerFinding.RightTyped();
        var behaviours = answer.Grounds.Select(ground => answer.On(ground, reading)).ToList();
        var varies = behaviours.Exists(behaviour => behaviour.Varies);
        var typed = behaviours.Select(behaviour => TypedGivens.In(behaviour, answer.Part, Trials)).FirstOrDefault(found => found.Count > 0)
            ?? [];
        // A constant is what some typed given would make of the key, whatever it comes from: it is one only if its number stands there.
        if (
            !varies
            && !typed.All(given =>
                answer.Content.Formula!.Contains(
                    Dealt.Right.Givens[given.Id].ToString("0.############", CultureInfo.InvariantCulture),
                    StringComparison.Ordinal
                )
            )
        )
            typed = [];
        return new AnswerFinding.NotFollowing(
            [.. typed.Select(given => new TypedGiven(given, Dealt.Right.Givens[given.Id], _returned.Cell(given).Cell))],
            varies
        );
    }

    /// <summary>
    /// A number that follows from own earlier answers. Without a method shown it must be one that says how somebody came to it, and so must
    /// the earlier ones.
    /// </summary>
    private Judgement? AsFollowThrough(TriedAnswer answer, EarlierAnswers earlier, Evidence evidence)
    {
        if (!evidence.FollowsOwn)
            return null;
        if (evidence.Rounding is { } rounding)
            return OfSlip(evidence.Reading, rounding, isFormula: true);
        if (!evidence.ShowsMethod && !(earlier.AreTelling && IsTelling(answer, evidence.Reading)))
            return null;
        return new(Outcome.FollowThrough, evidence.Reading, evidence.ShowsMethod, Carrying(earlier, evidence.ShowsMethod));
    }

    /// <summary>
    /// A formula that is right, but not on what stands before it: an earlier answer is wrong, blank, text or an error. The slip lies there
    /// and was paid for there, so right earlier answers are put into the cells.
    /// </summary>
    private Judgement? AsRightMethod(TriedAnswer answer, EarlierAnswers earlier)
    {
        if (!answer.IsFormula || (earlier.Wrong.Count == 0 && earlier.WithoutNumber.Count == 0))
            return null;
        foreach (var ground in answer.Grounds.Skip(1))
        {
            foreach (var reading in answer.ReadingsOn(ground))
            {
                var behaviour = answer.On(ground, reading);
                if (!behaviour.Varies)
                    continue;
                // On what stands there it may come to no number at all, which later parts must not take for one.
                var held = reading.Of(answer.Dealt.Value, answer.Part) is null ? null : reading;
                if (new RoundingFinder(answer.Part, Trials, _drawn.All).Find([behaviour], null, answer.PointsAt) is { } rounding)
                    return OfSlip(held, rounding, isFormula: true);
                if (!behaviour.IsRight(answer.Part) || TypedGivens.AreHiddenByTolerance(behaviour, answer.Part, Trials))
                    continue;
                return new(Outcome.FollowThrough, held, true, Carrying(earlier, methodShown: true));
            }
        }
        return null;
    }

    private static AnswerFinding Carrying(EarlierAnswers earlier, bool methodShown) =>
        methodShown && earlier.OriginsWithoutNumber is { Count: > 0 } missing
            ? new AnswerFinding.Waits(missing)
            : new AnswerFinding.FollowsThrough(earlier.Origins, methodShown);

    private Judgement? AsMisconception(TriedAnswer answer, EarlierAnswers earlier, Reading reading)
    {
        if (!answer.IsFormula && (reading.Dealt == 0 || IsFilledIn(answer.Part, reading.Written(reading.Dealt))))
            return null;
        if (answer.Part.Misconceptions.FirstOrDefault(misconception => Meets(answer, earlier, reading, misconception)) is not { } met)
            return null;
        // A typed number that is only near what the wrong method gives, and to all of its digits what one formula near the key gives, comes
        // of that one.
        return !answer.IsFormula && !IsWritten(answer.Part, met, reading) && NearMissIn(answer, earlier, reading) is { } nearer
            ? OfSlip(reading, nearer, isFormula: false)
            : new(Outcome.Misconception, reading, answer.IsFormula, new AnswerFinding.WrongTurn(met));
    }

    private bool IsWritten(Part part, Misconception misconception, Reading reading) =>
        new[] { Dealt.Right.Answers, Dealt.HeldBefore(part), Dealt.MeantBefore(part) }.Any(earlier =>
            Dealt.Number(misconception.Formula, earlier) is { } given && SameNumber.IsWritten(reading.Dealt, given)
        );

    /// <summary>
    /// True if the same wrong number is typed elsewhere in the exercise as well: filled in, and not the result of any method.
    /// </summary>
    private bool IsFilledIn(Part part, double number) =>
        _exercise
            .Parts.Where(other => other != part && other.IsNumber)
            .Any(other =>
                _returned.Evaluate(other, Dealt) is { Value: { IsNumber: true, Number: var held } } evaluation
                && Behaviour.IsSame(number, held)
                && !_returned.DependsOnSheet(evaluation)
                && !Accepts(other, Dealt.Right.Answers[other.Id], held)
            );

    /// <summary>
    /// Whether an answer is what a wrong method gives, on right or on the student's own earlier answers: under all trials for a formula, on
    /// whatever ground it follows the inputs, and on the dealt inputs for a typed number.
    /// </summary>
    private bool Meets(TriedAnswer answer, EarlierAnswers earlier, Reading reading, Misconception misconception)
    {
        bool Gives(int trial, IReadOnlyDictionary<string, double> before, double value) =>
            Accepts(answer.Part, Trials[trial].Number(misconception.Formula, before), value);
        bool OnRight(int trial, double value) => Gives(trial, Trials[trial].Right.Answers, value);
        bool OnMeant(int trial, double value) => Gives(trial, Trials[trial].MeantBefore(answer.Part), value);
        // 100 is typed for many reasons: it must be just what the wrong method gives, and not near it.
        if (!answer.IsFormula && TellingNumbers.IsPowerOfTen(reading.Dealt))
            return Dealt.Number(misconception.Formula, Dealt.Right.Answers) is { } mistaken && Behaviour.IsSame(mistaken, reading.Dealt);
        if (!answer.IsFormula)
            return OnRight(0, reading.Dealt)
                || (earlier.AreTelling && (Gives(0, Dealt.HeldBefore(answer.Part), reading.Dealt) || OnMeant(0, reading.Dealt)));
        return answer.Grounds.Any(ground =>
            answer.On(ground, reading) is { Varies: true } behaviour
            && (
                behaviour.Throughout(OnRight)
                || behaviour.Throughout((trial, value) => Gives(trial, ground.Earlier[trial], value))
                || behaviour.Throughout(OnMeant)
            )
        );
    }

    /// <summary>Wrong: what its cell holds is what later cells use, so that it is not read anew.</summary>
    private Judgement AsIncorrect(TriedAnswer answer, EarlierAnswers earlier, List<Evidence> evidence)
    {
        var reading = evidence[0].Reading;
        var slip = evidence.Select(one => SlipIn(answer, one)).FirstOrDefault(found => found is not null)
            ?? evidence.Select(one => NearMissIn(answer, earlier, one.Reading)).FirstOrDefault(found => found is not null);
        return slip is null
            ? new(Outcome.Incorrect, reading, false, new AnswerFinding.NotRight { Formula = InNames(answer) })
            : OfSlip(reading, slip, answer.IsFormula);
    }

    private Slip? NearMissIn(TriedAnswer answer, EarlierAnswers earlier, Reading reading)
    {
        if (_neighbours is null)
            return null;
        var finder = new NearMissFinder(_returned, Trials, _neighbours.Of(_exercise, answer.Part));
        if (answer.IsFormula)
            return _neighbours.OnAll && reading.IsPlain && answer.InNames is { } formula
                ? finder.Find(formula)
                : finder.Find(answer, reading);
        return IsTelling(answer, reading) && !IsFilledIn(answer.Part, reading.Written(reading.Dealt))
            ? finder.Find(answer.Part, reading.Dealt, earlier.AreTelling)
            : null;
    }

    /// <summary>What a formula that nothing explains does, so that the class's can be held against each other.</summary>
    private string? InNames(TriedAnswer answer) => _neighbours is not null && answer.IsFormula ? answer.InNames?.ToString() : null;

    private Slip? SlipIn(TriedAnswer answer, Evidence evidence)
    {
        var finder = new SlipFinder(answer.Part, Dealt);
        if (answer.IsFormula)
            return answer
                .Grounds.Select(ground => finder.Find(answer.On(ground, evidence.Reading)))
                .FirstOrDefault(slip => slip is not null)
                ?? evidence.Rounding;
        return IsTelling(answer, evidence.Reading)
            ? finder.Find(
                evidence.Reading.Dealt,
                [Dealt.Right.Answers[answer.Part.Id], Dealt.Number(answer.Part.Key, Dealt.MeantBefore(answer.Part))]
            )
            : null;
    }

    private static Judgement OfSlip(Reading? reading, Slip slip, bool isFormula) =>
        new(Outcome.Incorrect, reading, isFormula, slip.Finding) { Slip = slip.Kind };

    private Judgement AsNoNumber(TriedAnswer answer)
    {
        var value = answer.Dealt.Value;
        if (value.IsError)
            return new(Outcome.Incorrect, null, false, new AnswerFinding.ErrorValue(value.Error));
        return value.IsBlank ? Blank(answer.Part) : new(Outcome.Unreadable, null, false, UnreadableAnswer.Find(value, answer.Part));
    }

    /// <summary>
    /// Facts beside the finding: text made by a formula, a percentage a hundred times too large in its cell, a quantity that cannot be.
    /// </summary>
    private IEnumerable<AnswerFinding> Beside(TriedAnswer answer, Judgement judgement)
    {
        if (judgement.Reading is not { } reading)
            yield break;
        if (answer.IsTextOfFormula)
            yield return new AnswerFinding.MakesText(new(answer.Dealt.Value.ToString()));
        if (answer.Dealt.Value is not { IsNumber: true, Number: var held })
            yield break;
        if (reading.IsScaled)
            yield return new AnswerFinding.HundredfoldPercent(held);
        if (judgement.Outcome == Outcome.FollowThrough && IsBeyondReason(answer.Part, held))
            yield return new AnswerFinding.Impossible(held);
    }

    /// <summary>True for less than nothing, and for many times as much as any inputs give, where neither can be.</summary>
    private bool IsBeyondReason(Part part, double value) =>
        _drawn.Most(part) is { } most && (value < 0 || (most > 0 && value > ManyTimes * most));

    /// <summary>Keeps what the answer came to, for the parts after it.</summary>
    private void Remember(Part part, TriedAnswer? answer, Judgement judgement, EarlierAnswers earlier)
    {
        var isTelling =
            answer is { IsFormula: true } || (judgement.Reading is { } known && TellingNumbers.Is(known.Written(known.Dealt), Dealt, part));
        var values = answer?.Values(answer.AsItStands) ?? [];
        for (var trial = 0; trial < values.Count; trial++)
        {
            if (values[trial].IsNumber)
                Trials[trial].Held[part.Id] = values[trial].Number;
            if (judgement.Reading?.Of(values[trial], part) is { } meant)
                Trials[trial].Meant[part.Id] = meant;
        }
        var holdsNumber = values.Count > 0 && values[0].IsNumber;
        var isReached =
            answer is { IsFormula: true }
            && values.All(value => value.IsNumber)
            && values.Any(value => !Behaviour.IsSame(values[0].Number, value.Number));
        IReadOnlyList<Part> origins = judgement.Outcome == Outcome.FollowThrough ? earlier.Origins : [part];
        _judged[part.Id] = new(judgement, holdsNumber, isReached, isTelling, origins);
    }

    private bool IsTelling(TriedAnswer answer, Reading reading) => TellingNumbers.Is(reading.Written(reading.Dealt), Dealt, answer.Part);

    private static bool Accepts(Part part, double? expected, double value) => expected is { } right && part.Tolerance.Accepts(right, value);

    private static Judgement? FirstOf(List<Evidence> evidence, Func<Evidence, Judgement?> judge) =>
        evidence.Select(judge).FirstOrDefault(judgement => judgement is not null);
}
