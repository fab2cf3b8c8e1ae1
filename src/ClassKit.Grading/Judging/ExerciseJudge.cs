using ClassKit.CellFormulas;
using ClassKit.Exercises;

namespace ClassKit.Grading;

/// <summary>Judges the parts of one exercise in a returned workbook, in order, each with the student's own earlier answers at hand.</summary>
internal sealed class ExerciseJudge
{
    private readonly Exercise _exercise;
    private readonly ReturnedExercise _returned;
    private readonly MarkingScheme _marking;
    private readonly IReadOnlyList<Trial> _trials;
    private readonly Dictionary<string, Judgement> _judged = [];

    /// <param name="exercise">The exercise as dealt.</param>
    /// <param name="returned">What came back.</param>
    /// <param name="marking">How outcomes become points.</param>
    /// <param name="dealt">The student's own variant.</param>
    /// <param name="fresh">Other inputs under the same constraints.</param>
    public ExerciseJudge(
        Exercise exercise, ReturnedExercise returned, MarkingScheme marking, Variant dealt, IReadOnlyList<Variant> fresh)
    {
        _exercise = exercise;
        _returned = returned;
        _marking = marking;
        _trials = [new(dealt), .. fresh.Select(variant => new Trial(variant))];
    }

    private Trial Dealt => _trials[0];

    /// <summary>Judges every part.</summary>
    public IReadOnlyList<AnswerGrade> Judge() => [.. _exercise.Parts.Select(JudgePart)];

    private AnswerGrade JudgePart(Part part)
    {
        var content = _returned.Content(part);
        var dealt = content is null ? null : _returned.Evaluate(part, Dealt);
        var judgement = content is null
            ? new Judgement(Outcome.Blank, null, false, null, AnswerNotes.Blank(_returned.Cell(part)))
            : Judge(part, content, dealt!);
        Remember(part, judgement);
        return new AnswerGrade(
            _exercise, part, judgement.Outcome,
            Credit.Points(_marking, part, judgement), Credit.OutOf(part, judgement),
            dealt?.Value ?? CellValue.Blank, Dealt.Right.Answers[part.Id],
            content?.Formula is { } formula ? "=" + formula : null,
            judgement.Misconception, judgement.Note, OwnEarlierAnswers(part));
    }

    private Judgement Judge(Part part, CellContent content, Evaluation dealt)
    {
        if (dealt.Status != EvaluationStatus.Computed)
            return new(Outcome.Unsupported, null, false, null, AnswerNotes.Unsupported(dealt));
        if (Readings(part, content, dealt, instead: false) is { Count: > 0 } readings)
        {
            var direct = Judge(part, readings);
            return direct.Outcome is Outcome.Incorrect or Outcome.Misconception && Waiting(part, content, dealt) is { } waiting ? waiting : direct;
        }
        if (dealt.Value.IsError)
            return Waiting(part, content, dealt) ?? new(Outcome.Incorrect, null, false, null, AnswerNotes.ErrorValue(dealt));
        return dealt.Value.IsBlank
            ? new(Outcome.Blank, null, false, null, AnswerNotes.Blank(_returned.Cell(part)))
            : new(Outcome.Unreadable, null, false, null, AnswerNotes.Unreadable(dealt.Value, part));
    }

    /// <summary>Judges a number, the kindest finding first.</summary>
    private Judgement Judge(Part part, IReadOnlyList<Reading> readings) =>
        FirstOf(readings, reading => AsRight(part, reading))
        ?? FirstOf(readings, reading => AsFollowThrough(part, reading))
        ?? FirstOf(readings, reading => AsMisconception(part, reading))
        ?? AsIncorrect(part, Nearest(part, readings));

    private Judgement? AsRight(Part part, Reading reading)
    {
        var onRightFooting = EarlierUsed(part).All(before => _judged[before.Id].IsRightNumber);
        if (!IsRight(part, 0, reading.Dealt!.Value) && !(onRightFooting && IsFollowedThrough(part, 0, reading.Dealt.Value))) return null;
        return ShowsMethod(part, reading)
            ? new(Outcome.Sound, reading, true, null, AnswerNotes.Sound)
            : new(Outcome.ValueOnly, reading, false, null, ValueOnly(part, reading));
    }

    private string ValueOnly(Part part, Reading reading)
    {
        if (!reading.IsFormula) return AnswerNotes.ValueOnly(part);
        var typed = TypedGivens.In(reading, part, _trials);
        return AnswerNotes.NotFollowing(typed, _returned.Cell, Dealt.Right.Givens);
    }

    private Judgement? AsFollowThrough(Part part, Reading reading)
    {
        var wrong = WrongEarlier(part);
        if (wrong.Count == 0 || !IsFollowedThrough(part, 0, reading.Dealt!.Value)) return null;
        var methodShown = ShowsMethod(part, reading);
        return new(Outcome.FollowThrough, reading, methodShown, null, AnswerNotes.FollowThrough(part, wrong, methodShown));
    }

    private Judgement? AsMisconception(Part part, Reading reading)
    {
        foreach (var misconception in part.Misconceptions)
        {
            if (Agrees(part, reading, misconception))
                return new(Outcome.Misconception, reading, reading.IsFormula, misconception, misconception.Words);
        }
        return null;
    }

    private Judgement AsIncorrect(Part part, Reading reading)
    {
        var slip = new SlipFinder(part, _trials).Find(reading);
        return new(Outcome.Incorrect, reading, slip is not null && reading.IsFormula, null, slip?.Note ?? AnswerNotes.Incorrect) { Slip = slip?.Kind };
    }

    /// <summary>
    /// A formula that is right but has nothing right to work on: an earlier answer cell is blank, text or an error. The slip lies there and was
    /// paid for there, so the formula is tried with a number in that cell: the text's own if it reads as one, else what its key makes of what stands before it.
    /// </summary>
    private Judgement? Waiting(Part part, CellContent content, Evaluation dealt)
    {
        var unusable = EarlierWithoutNumber(part);
        if (content.Formula is null || unusable.Count == 0) return null;
        var right = Readings(part, content, dealt, instead: true).Find(reading => ShowsMethod(part, reading));
        return right is null
            ? null
            : new(Outcome.FollowThrough, right, true, null, AnswerNotes.Waiting(unusable)) { IsWaiting = true };
    }

    /// <summary>Every way in which the answer is a number on the dealt inputs.</summary>
    private List<Reading> Readings(Part part, CellContent content, Evaluation dealt, bool instead)
    {
        List<List<double?>> ways = [];
        var isFormula = content.Formula is not null && _returned.DependsOnSheet(dealt);
        if (content.Formula is not null)
        {
            var values = _trials.Select(trial => Numbers(part, (instead ? _returned.Evaluate(part, trial, Instead(part, trial)) : _returned.Evaluate(part, trial)).Value)).ToList();
            for (var way = 0; way < values[0].Count; way++)
                ways.Add([.. values.Select(numbers => way < numbers.Count ? numbers[way] : (double?)null)]);
        }
        else
        {
            ways.AddRange(Numbers(part, dealt.Value).Select(number => Enumerable.Repeat<double?>(number, _trials.Count).ToList()));
        }
        if (AnswerUnit.IsPercent(part.Unit))
            ways.AddRange([.. ways.Select(way => way.ConvertAll(value => value / 100))]);
        return ways.ConvertAll(way => new Reading(way, isFormula));
    }

    private static IReadOnlyList<double> Numbers(Part part, CellValue value) => value.Kind switch
    {
        CellValueKind.Number => [value.Number],
        CellValueKind.Text => AnswerText.Read(value.Text, part.Unit),
        CellValueKind.Blank or CellValueKind.Logical or CellValueKind.Error => [],
    };

    /// <summary>
    /// True if a formula does what the key does under every trial, on right or on the student's own earlier answers: on fresh inputs an earlier
    /// typed number stays what it is, and this part's own method must not pay for it a second time.
    /// </summary>
    private bool ShowsMethod(Part part, Reading reading) =>
        reading.IsFormula
        && reading.AgreesThroughout((trial, value) => IsRight(part, trial, value) || IsFollowedThrough(part, trial, value))
        && !TypedGivens.AreHiddenByTolerance(reading, part, _trials);

    private bool IsRight(Part part, int trial, double value) => part.Tolerance.Accepts(_trials[trial].Right.Answers[part.Id], value);

    private bool IsFollowedThrough(Part part, int trial, double value) =>
        _trials[trial].FollowedThrough(part) is { } expected && part.Tolerance.Accepts(expected, value);

    /// <summary>
    /// Whether a reading is what a wrong method gives, on right or on the student's own earlier answers: under all trials for a formula, on the
    /// dealt inputs for a typed number.
    /// </summary>
    private bool Agrees(Part part, Reading reading, Misconception misconception)
    {
        bool At(int trial, double value) =>
            (_trials[trial].Mistaken(misconception) is { } mistaken && part.Tolerance.Accepts(mistaken, value))
            || (_trials[trial].MistakenOnOwn(part, misconception) is { } onOwn && part.Tolerance.Accepts(onOwn, value));
        return reading.Agrees(At);
    }

    /// <summary>The earlier parts that this part's key builds on and that the student has a wrong number for.</summary>
    private List<Part> WrongEarlier(Part part) =>
        [.. EarlierUsed(part).Where(before => _judged[before.Id] is { IsRightNumber: false, Reading: not null })];

    /// <summary>The earlier parts that this part's key builds on and in whose cells no number stands.</summary>
    private List<Part> EarlierWithoutNumber(Part part) =>
        [.. EarlierUsed(part).Where(before => _judged[before.Id] is { Reading: null } or { IsWaiting: true } || IsText(before))];

    private bool IsText(Part part) => _returned.Content(part) is { Formula: null, Stored.IsText: true };

    private IEnumerable<Part> EarlierUsed(Part part) => _exercise.Parts
        .TakeWhile(other => other != part)
        .Where(before => part.Key.Names.Contains(before.Id, StringComparer.OrdinalIgnoreCase));

    private Dictionary<string, double> Instead(Part part, Trial trial)
    {
        var earlier = trial.Earlier(part);
        return EarlierWithoutNumber(part).ToDictionary(before => before.Id, before => earlier[before.Id]);
    }

    /// <summary>Keeps what the answer came to, for the parts after it.</summary>
    private void Remember(Part part, Judgement judgement)
    {
        _judged[part.Id] = judgement;
        if (judgement.Reading is not { } reading) return;
        for (var trial = 0; trial < _trials.Count; trial++)
        {
            if (reading.Values[trial] is { } value) _trials[trial].Own[part.Id] = value;
        }
    }

    /// <summary>Of several readings of a wrong answer, the one nearest in size to the right one: 70 in a percent cell is 70 %.</summary>
    private Reading Nearest(Part part, IReadOnlyList<Reading> readings)
    {
        var expected = Dealt.Right.Answers[part.Id];
        return readings.MinBy(reading => reading.Dealt is { } value && value != 0 && expected != 0
            ? Math.Abs(Math.Log(Math.Abs(value / expected)))
            : double.MaxValue)!;
    }

    private Dictionary<string, double> OwnEarlierAnswers(Part part) =>
        WrongEarlier(part).ToDictionary(before => before.Id, before => Dealt.Own[before.Id]);

    private static Judgement? FirstOf(IReadOnlyList<Reading> readings, Func<Reading, Judgement?> judge) =>
        readings.Where(reading => reading.Dealt is not null).Select(judge).FirstOrDefault(judgement => judgement is not null);
}
