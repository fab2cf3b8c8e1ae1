using ClassKit.CellFormulas.Evaluating;
using ClassKit.CellFormulas.Formulas;
using ClassKit.CellFormulas.Sheets;
using ClassKit.CellFormulas.Values;
using ClassKit.Exercises.Authoring;
using ClassKit.Grading.Judging.Trials;
using ClassKit.Grading.NearMisses;
using ClassKit.Grading.Numbers;

namespace ClassKit.Grading.Judging;

/// <summary>
/// One answer as it is tried: what its cell comes to under every trial, on the student's own earlier answers and on right ones.
/// </summary>
internal sealed class TriedAnswer
{
    private readonly ReturnedExercise _returned;
    private readonly IReadOnlyList<Trial> _trials;
    private readonly EarlierAnswers _earlier;
    private readonly bool _usesEarlier;
    private readonly Remembered<Ground, IReadOnlyList<CellValue>> _values = new();
    private readonly List<(Ground Ground, Reading Reading, Behaviour Behaviour)> _behaviours = [];
    private readonly Lazy<Given?> _pointsAt;
    private readonly Lazy<CellFormula?> _inNames;

    public TriedAnswer(Part part, CellContent content, TriedExercise tried, EarlierAnswers earlier)
    {
        (Part, Content, _returned, _trials, _earlier) = (part, content, tried.Returned, tried.Trials, earlier);
        Dealt = _returned.Evaluate(part, _trials[0]);
        IsFormula = content.Formula is not null && _returned.DependsOnSheet(Dealt);
        _usesEarlier = IsFormula && earlier.Parts.Any(before => Dealt.Dependencies.Contains(_returned.Cell(before)));
        Grounds = new(part, _trials, earlier, IsFormula, _usesEarlier, tried.Rules);
        _pointsAt = new(() => _returned.OnlyGivenOf(Dealt), isThreadSafe: false);
        _inNames = new(FindInNames, isThreadSafe: false);
    }

    public Part Part { get; }

    public CellContent Content { get; }

    /// <summary>What the cell comes to on the dealt inputs, the workbook as it stands.</summary>
    public Evaluation Dealt { get; }

    /// <summary>True for a formula that refers to a given or another answer, and does not work from typed numbers alone.</summary>
    public bool IsFormula { get; }

    /// <summary>The one given that a formula works with, and with nothing else of the sheet; null for any other.</summary>
    public Given? PointsAt => _pointsAt.Value;

    /// <summary>True if the formula works with an earlier part's cell, or with one that does.</summary>
    public bool Uses(Part before) => IsFormula && Dealt.Dependencies.Contains(_returned.Cell(before));

    /// <summary>
    /// The formula over the exercise's names, if it does there what it does in the cells, and with little work: everybody else's numbers
    /// are put into it later.
    /// </summary>
    public CellFormula? InNames => _inNames.Value;

    /// <summary>
    /// The formula over the exercise's names, whether or not it does there what it does in the cells; null if it cannot be written over
    /// them.
    /// </summary>
    public CellFormula? AsWritten => _returned.InNames(Part);

    /// <summary>True for a formula that makes text where a number is asked: other cells cannot compute with it.</summary>
    public bool IsTextOfFormula => Content.Formula is not null && Dealt.Value.IsText;

    /// <summary>Everything that the answer's method may stand on.</summary>
    public Grounds Grounds { get; }

    /// <summary>Right earlier answers in the cells that it uses; as they stand, where it uses none or they are right.</summary>
    public Ground OnRight => Grounds.OnRight ?? Grounds.AsItStands;

    /// <summary>What the cell comes to for inputs that are none of the trials, on right earlier answers.</summary>
    public CellValue At(Trial other) =>
        _returned
            .Evaluate(
                Part,
                other,
                _usesEarlier
                    ? _earlier.Parts.ToDictionary(before => before.Id, before => other.Right.Answers[before.Id])
                    : new Dictionary<string, double>()
            )
            .Value;

    /// <summary>What the answer does on a ground, read in a way.</summary>
    public Behaviour On(Ground ground, Reading reading)
    {
        foreach (var known in _behaviours)
        {
            if (ReferenceEquals(known.Ground, ground) && known.Reading == reading)
                return known.Behaviour;
        }
        var values = Values(ground);
        var behaviour = new Behaviour(EachTrial.Of(_trials, (_, at) => reading.Of(values[at], Part)), ground);
        _behaviours.Add((ground, reading, behaviour));
        return behaviour;
    }

    /// <summary>How the answer can be read on a ground; none where the cell comes to no number on the dealt inputs.</summary>
    public IReadOnlyList<Reading> ReadingsOn(Ground ground) => Reading.Of(Part, Values(ground)[0]);

    /// <summary>What the cell comes to on a ground under every trial.</summary>
    public IReadOnlyList<CellValue> Values(Ground ground) => _values.Of(ground, Evaluated);

    private CellValue[] Evaluated(Ground ground) =>
        Content.Formula is null ? EachTrial.Of(_trials, _ => Dealt.Value)
        : !_usesEarlier || ground.Instead[0].Count == 0 ? _returned.Values(Part, _trials)
        : _returned.Values(Part, _trials, ground.Instead);

    private CellFormula? FindInNames()
    {
        if (_returned.InNames(Part) is not { } formula)
            return null;
        var isOnRight = StandsOnRight(formula);
        var given = new NamedColumns(
            [.. _trials.Zip(OnRight.Earlier, (trial, earlier) => trial.NamesOn(isOnRight ? trial.Right.Answers : earlier))],
            SearchBudget.OneFormula
        ).Numbers(formula.Root);
        var values = Values(OnRight);
        for (var trial = 0; trial < values.Count; trial++)
        {
            if (given.IsEmpty || !values[trial].IsNumber || !Near.Computed.Same(values[trial].Number, given[trial]))
                return null;
        }
        return formula;
    }

    /// <summary>
    /// True of a formula that uses nothing before it, or where all before it is right: then it can be tried on what is right, which the
    /// class has in common.
    /// </summary>
    private bool StandsOnRight(CellFormula formula) =>
        formula.Names.All(name =>
            _trials[0].Right.Exercise.Givens.Any(given => IsCalled(given.Id, name))
            || (_usesEarlier && Grounds.AreOne && _earlier.Parts.Any(before => IsCalled(before.Id, name)))
        );

    private static bool IsCalled(string id, string name) => string.Equals(id, name, StringComparison.OrdinalIgnoreCase);
}
