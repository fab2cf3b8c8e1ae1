using System.Globalization;
using ClassKit.CellFormulas.Formulas;
using ClassKit.CellFormulas.Values;
using ClassKit.Exercises.Authoring;
using ClassKit.Exercises.Dealing;
using ClassKit.Exercises.Keys;
using ClassKit.Exercises.Layout;
using ClassKit.Grading.Foresight;
using ClassKit.Grading.Results;

namespace ClassKit.UseCases.Rehearsing;

/// <summary>One student's answers to one exercise, made up part by part, with the truth about each.</summary>
/// <remarks>
/// The truth follows from how an answer is made and from what stands in the cells it builds on. Nothing here asks the grader, so the two
/// can be held against each other.
/// </remarks>
public sealed class AnswerSheet
{
    private const double SlipFactor = 1.37;
    private const double SlipFactorStep = 0.11;
    private const double SlipOffset = 0.0137;

    private const string Words = "Words of an invented student, for nobody to judge.";

    private readonly Exercise _exercise;
    private readonly IReadOnlyDictionary<string, decimal> _givens;
    private readonly IReadOnlyDictionary<string, double> _right;
    private readonly Dictionary<string, string> _cells;
    private readonly IReadOnlyList<ForeseenTurn> _unlisted;
    private readonly Dictionary<string, double> _own = [];
    private readonly Dictionary<string, bool> _isRight = [];

    /// <summary>An empty sheet of one exercise for one student.</summary>
    /// <param name="layout">Where the exercise stands.</param>
    /// <param name="student">Who was dealt it.</param>
    /// <param name="unlisted">The wrong turns that the exercise does not list; none if left out.</param>
    public AnswerSheet(ExerciseLayout layout, DealtStudent student, IReadOnlyList<ForeseenTurn>? unlisted = null)
    {
        ArgumentNullException.ThrowIfNull(layout);
        ArgumentNullException.ThrowIfNull(student);
        _exercise = layout.Exercise;
        _unlisted = unlisted ?? [];
        _givens = student.GivensOf(_exercise.Id);
        _right = student.AnswersOf(_exercise.Id);
        _cells = layout
            .Givens.Select(place => (place.Given.Id, place.Address.Cell))
            .Concat(layout.Answers.Select(place => (place.Part.Id, place.Address.Cell)))
            .ToDictionary(cell => cell.Item1, cell => cell.Item2, StringComparer.OrdinalIgnoreCase);
    }

    /// <summary>Answers the next part.</summary>
    /// <param name="part">The parts come in the exercise's order.</param>
    /// <param name="way">How; a way that does not fit here (no misconception to act out) falls back to
    /// <see cref="AnswerWay.Cells"/>.</param>
    /// <param name="pick">Which of several misconceptions or givens is meant; any number.</param>
    public RehearsedAnswer Answer(Part part, AnswerWay way, int pick = 0)
    {
        ArgumentNullException.ThrowIfNull(part);
        if (part.InWords is not null)
            return new(
                _exercise.Id,
                part.Id,
                way,
                way == AnswerWay.Blank ? null : Words,
                way == AnswerWay.Blank ? Outcome.Blank : Outcome.Unsupported,
                null
            );
        if (part.Choice is not null)
            return Choose(part, way, pick);
        return way switch
        {
            AnswerWay.Cells => Cells(part),
            AnswerWay.OneGo => Write(part, way, InOneGo(part), Outcome.Sound, _right[part.Id]),
            AnswerWay.Typed => Write(part, way, Rounded(part), Outcome.ValueOnly, Rounded(part)),
            AnswerWay.TypedWithUnit => Write(part, way, WithUnit(part), Outcome.ValueOnly, Rounded(part), readable: part.Unit.IsPercent),
            AnswerWay.TypedWithComma => Write(part, way, WithComma(part), Outcome.ValueOnly, Rounded(part), readable: false),
            AnswerWay.PartlyTyped => PartlyTyped(part, pick),
            AnswerWay.HardCoded => Write(
                part,
                way,
                $"={_cells[_exercise.Givens[0].Id]}*0+{_right[part.Id].ToString("R", CultureInfo.InvariantCulture)}",
                Outcome.ValueOnly,
                _right[part.Id]
            ),
            AnswerWay.LeftAsText => CarriesOn(part.Key)
                ? Cells(part)
                : Write(part, way, " " + OverCells(part.Key), Outcome.Sound, _right[part.Id]),
            AnswerWay.Filler => HasMeaning(part, pick % 2) ? Slip(part) : Write(part, way, (double)(pick % 2), Outcome.Incorrect, pick % 2),
            AnswerWay.WrongTurn or AnswerWay.WrongTurnTyped => WrongTurn(part, way, pick),
            AnswerWay.UnlistedTurn => UnlistedTurn(part, pick),
            AnswerWay.Slip => Slip(part),
            AnswerWay.Blank => Write(part, way, null, Outcome.Blank, null),
            AnswerWay.DivisionByZero => Write(part, way, $"={_cells[_exercise.Givens[0].Id]}/0", Outcome.Incorrect, null),
            AnswerWay.Words => Write(part, way, "see my notes", Outcome.Unreadable, null),
        };
    }

    private RehearsedAnswer Choose(Part part, AnswerWay way, int pick)
    {
        var chosen = ChosenAnswer.Of(_exercise, part, way, pick, _givens, _right, _own, CarriesOn(part.Key));
        return new(_exercise.Id, part.Id, way, chosen.Content, chosen.Truth, chosen.Misconception);
    }

    private RehearsedAnswer Cells(Part part)
    {
        var earlier = EarlierUsed(part.Key).ToList();
        // On an empty or broken cell the formula comes to nothing right, though its method is.
        var number = earlier.All(_own.ContainsKey) ? KeyValues.Number(part.Key, OwnNames()) : null;
        // A slip so small that it stays inside this part's tolerance leaves the number right.
        var carriesOn =
            number is null || (earlier.Any(before => !_isRight[before]) && !part.Exactness.Accepts(_right[part.Id], number.Value));
        return Write(part, AnswerWay.Cells, OverCells(part.Key), carriesOn ? Outcome.FollowThrough : Outcome.Sound, number);
    }

    private RehearsedAnswer PartlyTyped(Part part, int pick)
    {
        var drawn = _exercise.Givens.Where(given => !given.IsConstant && part.Key.Names.Contains(given.Id)).ToList();
        if (drawn.Count == 0 || CarriesOn(part.Key))
            return Cells(part);
        var typed = drawn[pick % drawn.Count].Id;
        var formula = part.Key.ReplaceNames(name =>
            name == typed ? _givens[typed].ToString(CultureInfo.InvariantCulture) : _cells.GetValueOrDefault(name)
        );
        return Write(part, AnswerWay.PartlyTyped, formula.ToString(), Outcome.ValueOnly, _right[part.Id]);
    }

    private RehearsedAnswer WrongTurn(Part part, AnswerWay way, int pick)
    {
        if (part.Misconceptions.Count == 0)
            return Cells(part);
        var misconception = part.Misconceptions[pick % part.Misconceptions.Count];
        if (
            CarriesOn(part.Key)
            || CarriesOn(misconception.Formula)
            || KeyValues.Number(misconception.Formula, OwnNames()) is not { } number
        )
            return Cells(part);
        object content = way == AnswerWay.WrongTurn ? OverCells(misconception.Formula) : number;
        return Write(part, way, content, Outcome.Misconception, number, misconception.Id);
    }

    private RehearsedAnswer UnlistedTurn(Part part, int pick)
    {
        var turns = _unlisted.Where(turn => turn.Part.Id == part.Id && !turn.IsHidden).ToList();
        if (turns.Count == 0)
            return Cells(part);
        var turn = turns[pick % turns.Count].Formula;
        if (CarriesOn(part.Key) || CarriesOn(turn) || KeyValues.Number(turn, OwnNames()) is not { } number || HasMeaning(part, number))
            return Cells(part);
        return Write(part, AnswerWay.UnlistedTurn, OverCells(turn), Outcome.Incorrect, number);
    }

    private RehearsedAnswer Slip(Part part)
    {
        var right = _right[part.Id];
        double number;
        var turn = 0;
        // What is added grows as well: a right answer of 0 is moved by no factor, and a wide tolerance takes in much around it.
        do
        {
            number = Math.Round(
                right * (SlipFactor + turn * SlipFactorStep) + SlipOffset + turn * (SlipOffset + part.Tolerance.Around(right)),
                4,
                MidpointRounding.AwayFromZero
            );
            turn++;
        } while (HasMeaning(part, number));
        return Write(part, AnswerWay.Slip, number, Outcome.Incorrect, number);
    }

    /// <summary>True if a number is what some method gives, on right or on own earlier answers: then it is no mere slip.</summary>
    private bool HasMeaning(Part part, double number)
    {
        var carried = new Dictionary<string, double>(_right);
        foreach (var before in _exercise.Parts.Where(before => _isRight.ContainsKey(before.Id)))
            carried[before.Id] = _own.TryGetValue(before.Id, out var own)
                ? own
                : KeyValues.Number(before.Key, KeyValues.Names(_givens, carried)) ?? _right[before.Id];
        return part
            .Misconceptions.Select(misconception => misconception.Formula)
            .Prepend(part.Key)
            .SelectMany(formula =>
                (double?[])
                    [
                        KeyValues.Number(formula, KeyValues.Names(_givens, _right)),
                        KeyValues.Number(formula, KeyValues.Names(_givens, carried)),
                    ]
            )
            .Any(meant => meant is { } expected && part.Exactness.Accepts(expected, number));
    }

    private RehearsedAnswer Write(
        Part part,
        AnswerWay way,
        object? content,
        Outcome truth,
        double? number,
        string? misconception = null,
        bool readable = true
    )
    {
        if (number is { } own && readable)
            _own[part.Id] = own;
        _isRight[part.Id] = truth is Outcome.Sound or Outcome.ValueOnly;
        return new(_exercise.Id, part.Id, way, content, truth, misconception);
    }

    /// <summary>True if a formula builds on an earlier answer that is missing, broken or wrong.</summary>
    private bool CarriesOn(CellFormula formula) => EarlierUsed(formula).Any(before => !_own.ContainsKey(before) || !_isRight[before]);

    private IEnumerable<string> EarlierUsed(CellFormula formula) => formula.Names.Where(_isRight.ContainsKey);

    private Dictionary<string, CellValue> OwnNames() => KeyValues.Names(_givens, _own);

    private string OverCells(CellFormula formula) => formula.ReplaceNames(_cells.GetValueOrDefault).ToString();

    private string InOneGo(Part part)
    {
        var texts = _exercise.Givens.ToDictionary(given => given.Id, given => _cells[given.Id], StringComparer.OrdinalIgnoreCase);
        foreach (var before in _exercise.Parts.TakeWhile(other => other != part))
            texts[before.Id] = $"({before.Key.ReplaceNames(texts.GetValueOrDefault).ToString()[1..]})";
        return part.Key.ReplaceNames(texts.GetValueOrDefault).ToString();
    }

    private double Rounded(Part part) =>
        double.Parse(_right[part.Id].ToString("G9", CultureInfo.InvariantCulture), CultureInfo.InvariantCulture);

    private string WithUnit(Part part) =>
        part.Unit.IsPercent
            ? part.Unit.Shown(Rounded(part)).ToString("0.####", CultureInfo.InvariantCulture) + " %"
            : $"{Rounded(part).ToString("0.####", CultureInfo.InvariantCulture)} {(part.Unit.IsNone ? "in all" : part.Unit.Sign)}";

    private string WithComma(Part part) => Rounded(part).ToString("0.######", CultureInfo.InvariantCulture).Replace('.', ',');
}
