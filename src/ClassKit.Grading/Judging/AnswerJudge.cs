using ClassKit.CellFormulas.Calls;
using ClassKit.CellFormulas.Formulas;
using ClassKit.Exercises.Authoring;
using ClassKit.Exercises.Keys;
using ClassKit.Grading.Findings;
using ClassKit.Grading.Judging.Slips;
using ClassKit.Grading.Judging.Trials;
using ClassKit.Grading.Numbers;
using ClassKit.Grading.Results;

namespace ClassKit.Grading.Judging;

/// <summary>Judges one answer that is tried under all inputs, with the student's own earlier answers at hand.</summary>
/// <remarks>First what an answer shows is gathered (<see cref="Evidence"/>), then the kindest finding that it bears out is taken.</remarks>
/// <param name="tried">The exercise and what it is tried with.</param>
internal sealed class AnswerJudge(TriedExercise tried)
{
    private readonly MisconceptionFinder _misconceptions = new(tried);

    private IReadOnlyList<Trial> Trials => tried.Trials;

    private Trial Dealt => tried.Dealt;

    /// <summary>What is found of an answer.</summary>
    public Judgement Judge(TriedAnswer answer, EarlierAnswers earlier)
    {
        if (answer.Dealt.Status != EvaluationStatus.Computed)
            return Judgement.Unsupported(new AnswerFinding.NotEvaluated(answer.Dealt.Reason!));
        var evidence = answer.ReadingsOn(answer.Grounds.AsItStands).Select(reading => EvidenceOf(answer, earlier, reading)).ToList();
        var judgement = Verdict(answer, earlier, evidence);
        return judgement with { Beside = [.. Beside(answer, judgement)] };
    }

    /// <summary>The one ordered decision: the kindest finding that the evidence bears out.</summary>
    private Judgement Verdict(TriedAnswer answer, EarlierAnswers earlier, List<Evidence> evidence) =>
        AsRounded(answer, evidence)
        ?? FirstOf(evidence, one => AsRight(answer, one))
        ?? FirstOf(evidence, one => AsFollowThrough(answer, earlier, one))
        ?? AsRightMethod(answer, earlier)
        ?? FirstOf(evidence, one => AsMisconception(answer, earlier, one.Reading))
        ?? (evidence.Count > 0 ? AsIncorrect(answer, earlier, evidence) : AsNoNumber(answer));

    /// <summary>The right method, and a rounding that stands in the formula; not what only gives the right number by chance.</summary>
    private Judgement? AsRounded(TriedAnswer answer, List<Evidence> evidence) =>
        answer.IsFormula
        && tried.MayRound(answer)
        && evidence.Find(one => one.Reading.IsPlain) is { } plain
        && answer.InNames is { } formula
        && tried.Rounded(answer.Part, formula) is { } rounding
            ? Judgement.OfSlip(plain.Reading, rounding, isFormula: true)
            : null;

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
        tried.Rules.InProportion
            ? OwnAllowance.Accepts(tried.ToleranceOf(answer.Part), own, Dealt.Right.Answers[answer.Part.Id], value, !answer.IsFormula)
            : Accepts(answer.Part, own, value);

    /// <summary>
    /// The first ground on which the answer does what the key does under all trials. A constant does not, nor does a formula that hides a
    /// typed given in the tolerance.
    /// </summary>
    private Behaviour? Method(TriedAnswer answer, Reading reading) =>
        !answer.IsFormula || answer.IsTextOfFormula
            ? null
            : answer
                .Grounds.All.Select(ground => answer.On(ground, reading))
                .FirstOrDefault(behaviour =>
                    behaviour.IsRight(tried.ToleranceOf(answer.Part))
                    && behaviour.Varies
                    && !TypedGivens.AreHiddenByTolerance(behaviour, answer.Part, Trials)
                );

    /// <summary>
    /// What rounds more than the part allows: in the method that was shown, or else in what comes near one on any ground.
    /// </summary>
    private Slip? RoundingIn(TriedAnswer answer, Reading reading, Behaviour? method)
    {
        if (!answer.IsFormula || answer.IsTextOfFormula)
            return null;
        return new RoundingFinder(answer.Part, Trials, tried.Drawn.All).Find(
            answer.Grounds.All.Select(ground => answer.On(ground, reading)),
            method,
            answer.PointsAt
        );
    }

    private Judgement? AsRight(TriedAnswer answer, Evidence evidence)
    {
        if (!evidence.IsRight)
            return null;
        if (evidence.Rounding is { } rounding)
            return Judgement.OfSlip(evidence.Reading, rounding, isFormula: true);
        return evidence.ShowsMethod
            ? new(Outcome.Sound, evidence.Reading, true, Right(answer, evidence))
            : new(Outcome.ValueOnly, evidence.Reading, false, NumberOnly(answer, evidence.Reading));
    }

    /// <summary>Right, and whether by the method or by what only comes near enough to it.</summary>
    private AnswerFinding.Right Right(TriedAnswer answer, Evidence evidence) =>
        (!evidence.Method!.IsExact || tried.MayRound(answer))
        && InNames(answer) is { } written
        && !tried.IsMethod(answer.Part, CellFormula.Of(written))
            ? new() { Formula = written, Cells = CellsOf(answer) }
            : new();

    private AnswerFinding NumberOnly(TriedAnswer answer, Reading reading)
    {
        if (answer.IsTextOfFormula)
            return new AnswerFinding.RightInText();
        if (!answer.IsFormula)
            return new AnswerFinding.RightTyped();
        var behaviours = answer.Grounds.All.Select(ground => answer.On(ground, reading)).ToList();
        var varies = behaviours.Exists(behaviour => behaviour.Varies);
        var typed = behaviours.Select(behaviour => TypedGivens.In(behaviour, answer.Part, Trials)).FirstOrDefault(found => found.Count > 0)
            ?? [];
        // A constant is what some typed given would make of the key, whatever it comes from: it is one only if its number stands there.
        if (
            (!varies || tried.Rules.ReadsRounding)
            && !typed.All(given => tried.Returned.HasWritten(answer.Part, (double)Dealt.Right.Givens[given.Id]))
        )
            typed = [];
        return new AnswerFinding.NotFollowing(
            [.. typed.Select(given => new TypedGiven(given, Dealt.Right.Givens[given.Id], tried.Returned.Cell(given).Cell))],
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
            return Judgement.OfSlip(evidence.Reading, rounding, isFormula: true);
        if (
            !evidence.ShowsMethod
            && !(earlier.AreTelling && tried.IsTelling(answer.Part, evidence.Reading))
            && !CarriesExactly(answer, earlier, evidence.Reading)
        )
            return null;
        return new(Outcome.FollowThrough, evidence.Reading, evidence.ShowsMethod, Carrying(answer, earlier, evidence.ShowsMethod));
    }

    /// <summary>
    /// A typed number that is no evidence by itself, or stands on an answer that is none, and is to the last digit what the key makes of
    /// that answer. Whoever worked it out cannot help that it is a given's number as well, and who copies a given meets it hardly ever: of
    /// pairs of givens copied into one part and the next fewer than one in a hundred do, over all that ships. Nothing follows from a number that is filled in, or that the key gives
    /// without the earlier answer too.
    /// </summary>
    private bool CarriesExactly(TriedAnswer answer, EarlierAnswers earlier, Reading reading)
    {
        if (!tried.Rules.CarriesExactly || answer.IsFormula || tried.IsFilledIn(answer.Part, reading.Written(reading.Dealt)))
            return false;
        var toItsDigits = tried.IsTelling(answer.Part, reading);
        return new[] { Dealt.HeldBefore(answer.Part), Dealt.MeantBefore(answer.Part) }.Any(own =>
            Dealt.Number(answer.Part.Key, own) is { } carried
            && (Near.Computed.Same(carried, reading.Dealt) || (toItsDigits && TypedDigits.AreThoseOf(carried, reading.Dealt)))
            && earlier.NotTelling.All(before => LeavesItsMark(answer.Part, own, before, reading.Dealt))
        );
    }

    /// <summary>
    /// True of an earlier answer that a number shows to have been used. On a 0 the key gives what it gives without it, and on a 1, a 10 or a
    /// 100 so does a key that multiplies by it or divides, but for the point.
    /// </summary>
    private bool LeavesItsMark(Part part, IReadOnlyDictionary<string, double> own, Part before, double number) =>
        own[before.Id] != 0
        && (
            !TellingNumbers.IsPowerOfTen(own[before.Id])
            || Dealt.Number(part.Key, new Dictionary<string, double>(own) { [before.Id] = 1 }) is not { } without
            || without == 0
            || !TellingNumbers.IsPowerOfTen(number / without)
        );

    /// <summary>
    /// A formula that is right, but not on what stands before it: an earlier answer is wrong, blank, text or an error. The slip lies there
    /// and was paid for there, so right earlier answers are put into the cells.
    /// </summary>
    private Judgement? AsRightMethod(TriedAnswer answer, EarlierAnswers earlier)
    {
        if (!answer.IsFormula)
            return null;
        if (
            earlier.Wrong.Count == 0
            && earlier.WithoutNumber.Count == 0
            && !(tried.Rules.OtherWays && earlier.NotRight(answer.Uses).Count > 0)
        )
            return null;
        foreach (var ground in answer.Grounds.BesideAsItStands)
        {
            foreach (var reading in answer.ReadingsOn(ground))
            {
                var behaviour = answer.On(ground, reading);
                if (!behaviour.Varies)
                    continue;
                // On what stands there it may come to no number at all, which later parts must not take for one.
                var held = reading.Of(answer.Dealt.Value, answer.Part) is null ? null : reading;
                if (new RoundingFinder(answer.Part, Trials, tried.Drawn.All).Find([behaviour], null, answer.PointsAt) is { } rounding)
                    return Judgement.OfSlip(held, rounding, isFormula: true);
                if (!behaviour.IsRight(tried.ToleranceOf(answer.Part)) || TypedGivens.AreHiddenByTolerance(behaviour, answer.Part, Trials))
                    continue;
                return new(Outcome.FollowThrough, held, true, Carrying(answer, earlier, methodShown: true));
            }
        }
        return null;
    }

    /// <summary>
    /// What it carries on: of a formula only what lies behind the cells that it uses. One that goes round a blank, straight to what stands
    /// before it, lacks nothing there.
    /// </summary>
    private static AnswerFinding Carrying(TriedAnswer answer, EarlierAnswers earlier, bool methodShown)
    {
        if (methodShown && earlier.OriginsWithoutNumber.Where(answer.Uses).ToList() is { Count: > 0 } missing)
            return new AnswerFinding.Waits(missing);
        // What the key does not name, the formula has come by another way.
        if (
            methodShown
            && earlier.Origins.Count == 0
            && earlier.NotRight(answer.Uses).Where(one => !earlier.HoldsNumber(one)).ToList() is { Count: > 0 } blank
        )
            return new AnswerFinding.Waits(blank);
        var behind = methodShown ? earlier.OriginsBehind(answer.Uses) : [];
        return new AnswerFinding.FollowsThrough(behind.Count > 0 ? behind : earlier.Origins, methodShown);
    }

    private Judgement? AsMisconception(TriedAnswer answer, EarlierAnswers earlier, Reading reading)
    {
        if (_misconceptions.Find(answer, earlier, reading) is not { } met)
            return null;
        if (
            answer.IsFormula
            && tried.Rules.ExactFirst
            && !_misconceptions.IsExact(answer, met, reading)
            && NearMissIn(answer, earlier, reading) is { Finding: AnswerFinding.NearMiss miss } exact
            && answer.InNames is { } formula
            && DoAlike(formula, CellFormula.Of(miss.Formula))
        )
            return Judgement.OfSlip(reading, exact, isFormula: true);
        // A typed number that is only near what the wrong method gives, and to all of its digits what one formula near the key gives, comes
        // of that one.
        return
            !answer.IsFormula && !_misconceptions.IsWritten(answer.Part, met, reading) && NearMissIn(answer, earlier, reading) is { } nearer
            ? Judgement.OfSlip(reading, nearer, isFormula: false)
            : new(Outcome.Misconception, reading, answer.IsFormula, new AnswerFinding.WrongTurn(met));
    }

    /// <summary>True if two formulas over the exercise's names are one on everything drawn for the class.</summary>
    private bool DoAlike(CellFormula one, CellFormula other) =>
        tried.Drawn.All.All(variant =>
            KeyValues.NamesInPlace(variant.Givens, variant.Answers) is var names
            && KeyValues.Number(one, names) is { } value
            && KeyValues.Number(other, names) is { } same
            && Near.Computed.Same(value, same)
        );

    /// <summary>Wrong: what its cell holds is what later cells use, so that it is not read anew.</summary>
    private Judgement AsIncorrect(TriedAnswer answer, EarlierAnswers earlier, List<Evidence> evidence)
    {
        var reading = evidence[0].Reading;
        var slip = evidence.Select(one => SlipIn(answer, one)).FirstOrDefault(found => found is not null)
            ?? evidence.Select(one => NearMissIn(answer, earlier, one.Reading)).FirstOrDefault(found => found is not null);
        return slip is null
            ? new(
                Outcome.Incorrect,
                reading,
                false,
                new AnswerFinding.NotRight
                {
                    Formula = InNames(answer),
                    Cells = CellsOf(answer),
                    Lacks = answer.IsFormula ? tried.Returned.Unusable(answer.Part, answer.Dealt) : null,
                }
            )
            : Judgement.OfSlip(
                reading,
                slip.Finding is AnswerFinding.OffByTens tens ? slip with { Finding = AsWritten(tens) } : slip,
                answer.IsFormula
            );

        AnswerFinding AsWritten(AnswerFinding.OffByTens tens) => tens with { Formula = InNames(answer), Cells = CellsOf(answer) };
    }

    /// <summary>Where what a formula over the exercise's names uses stands; null for any other answer.</summary>
    private IReadOnlyDictionary<string, string>? CellsOf(TriedAnswer answer) =>
        InNames(answer) is null ? null : tried.Returned.Cells(tried.Exercise);

    private Slip? NearMissIn(TriedAnswer answer, EarlierAnswers earlier, Reading reading)
    {
        if (!tried.Rules.NearMisses)
            return null;
        var finder = new NearMissFinder(tried.Returned, Trials, tried.Neighbours(answer.Part));
        if (answer.IsFormula)
            return tried.Rules.OnAllInputs && reading.IsPlain && answer.InNames is { } formula
                ? finder.Find(formula)
                : finder.Find(answer, reading);
        return tried.IsTelling(answer.Part, reading) && !tried.IsFilledIn(answer.Part, reading.Written(reading.Dealt))
            ? finder.Find(answer.Part, reading.Dealt, earlier.AreTelling)
            : null;
    }

    /// <summary>What a formula that nothing explains does, so that the class's can be held against each other.</summary>
    private string? InNames(TriedAnswer answer) => tried.Rules.NearMisses && answer.IsFormula ? answer.InNames?.ToString() : null;

    private Slip? SlipIn(TriedAnswer answer, Evidence evidence)
    {
        var finder = new SlipFinder(answer.Part, Dealt, tried.Rules);
        if (answer.IsFormula)
            return answer
                .Grounds.All.Select(ground => finder.Find(answer.On(ground, evidence.Reading)))
                .FirstOrDefault(slip => slip is not null)
                ?? evidence.Rounding;
        return tried.IsTelling(answer.Part, evidence.Reading)
            ? finder.Find(
                evidence.Reading.Dealt,
                [Dealt.Right.Answers[answer.Part.Id], Dealt.Number(answer.Part.Key, Dealt.MeantBefore(answer.Part))]
            )
            : null;
    }

    private Judgement AsNoNumber(TriedAnswer answer)
    {
        var value = answer.Dealt.Value;
        if (value.IsError)
            return new(
                Outcome.Incorrect,
                null,
                false,
                new AnswerFinding.ErrorValue(value.Error) { By = tried.Returned.Unusable(answer.Part, answer.Dealt) }
            );
        return value.IsBlank
            ? Judgement.OfNothing(tried.Returned.Cell(answer.Part))
            : new(Outcome.Unreadable, null, false, UnreadableAnswer.Find(value, answer.Part));
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
        if (judgement.Outcome == Outcome.FollowThrough && tried.IsBeyondReason(answer.Part, held))
            yield return new AnswerFinding.Impossible(held);
    }

    private bool Accepts(Part part, double? expected, double value) =>
        expected is { } right && tried.ToleranceOf(part).Accepts(right, value);

    private static Judgement? FirstOf(List<Evidence> evidence, Func<Evidence, Judgement?> judge) =>
        evidence.Select(judge).FirstOrDefault(judgement => judgement is not null);
}
