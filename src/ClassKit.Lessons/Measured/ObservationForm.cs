using System.Globalization;
using ClassKit.Exercises.Cohorts;
using ClassKit.Exercises.Identity;
using ClassKit.Lessons.Authored;
using ClassKit.Lessons.Classes;
using ClassKit.Lessons.Packs;

namespace ClassKit.Lessons.Measured;

/// <summary>What a team fills in at the bench: a guess and up to three pieces of every bread, in the class's units.</summary>
public sealed record ObservationForm
{
    /// <summary>How many pieces of a bread are measured where a team makes so many.</summary>
    public const int MostPieces = 3;

    /// <summary>The field with the team's name or number.</summary>
    public const string Team = "team";

    private readonly string _id;
    private readonly Dictionary<string, int> _pieces;
    private readonly List<LessonFormula> _asked;
    private readonly Func<int, string> _nameOf;

    /// <summary>What the class prints on; null where nothing is said.</summary>
    public Paper? Paper { get; }

    /// <summary>The form of a lesson and a class.</summary>
    public ObservationForm(ComputedPack pack)
    {
        ArgumentNullException.ThrowIfNull(pack);
        (Lesson, Cohort, Units, Teams, Paper) = (pack.Lesson.Title, pack.Class.Name, pack.Class.Units, pack.Class.Teams, pack.Class.Paper);
        Breads = [.. MeasuredBread.AskedOf(pack).Select(asked => asked.Compared.Bread)];
        _asked = [.. pack.Comparison.Select(compared => compared.Bread)];
        (_id, _nameOf) = (pack.Lesson.Id, pack.Class.TeamName);
        _pieces = pack.Cards.ToDictionary(card => card.Bread.Formula.Id, card => MeasuredOf(card.Pieces), StringComparer.Ordinal);
    }

    /// <summary>The lesson's title.</summary>
    public string Lesson { get; }

    /// <summary>What the class is called.</summary>
    public string Cohort { get; }

    /// <summary>What is measured in.</summary>
    public UnitSystem Units { get; }

    /// <summary>How many teams there are.</summary>
    public int Teams { get; }

    /// <summary>What the teams are called, in the order of their numbers: <c>Team 1</c>, <c>Team Rye</c>.</summary>
    public IReadOnlyList<string> TeamNames => [.. Enumerable.Range(1, Teams).Select(team => $"Team {_nameOf(team)}")];

    /// <summary>The breads, in the lesson's order, each with its control behind it where it has one.</summary>
    public IReadOnlyList<LessonFormula> Breads { get; }

    /// <summary>Which lesson and units it is for, whatever the class is called; see <see cref="FormIdentity"/>.</summary>
    public string Identity => IdentityWith([]);

    /// <summary>True of a file that says that it is of this form; see <see cref="FormIdentity.IsOf"/>.</summary>
    /// <param name="identity">The identity in the file.</param>
    /// <param name="called">What it calls itself; null where it does not say.</param>
    public bool IsOf(string identity, string? called) => FormIdentity.IsOf(identity, called, Lesson, Cohort, IdentityWith);

    /// <summary>How many pieces are measured of what a team makes: all of a few, <see cref="MostPieces"/> of many.</summary>
    /// <param name="made">How many a team makes; at least 1.</param>
    public static int MeasuredOf(int made) => Math.Min(made, MostPieces);

    /// <summary>How many pieces of a bread are measured: no more than a team makes.</summary>
    public int PiecesOf(LessonFormula bread)
    {
        ArgumentNullException.ThrowIfNull(bread);
        return _pieces.GetValueOrDefault(bread.Formula.Id, 1);
    }

    /// <summary>How often something is measured of a bread: of each of its pieces, of its one bowl, of one guess.</summary>
    public int PiecesOf(LessonFormula bread, Measure measure) =>
        measure is Measure.GuessedHeight or Measure.MixedTemperature ? 1 : PiecesOf(bread);

    /// <summary>
    /// What is measured of a bread and typed, the guess first; the loss is worked out, and nobody guesses or mixes a control.
    /// </summary>
    public IEnumerable<Measure> Typed(LessonFormula bread)
    {
        ArgumentNullException.ThrowIfNull(bread);
        return _pieces.ContainsKey(bread.Formula.Id)
            ? [Measure.GuessedHeight, Measure.MixedTemperature, .. Authored(bread)]
            : Authored(bread);
    }

    /// <summary>Where a measurement stands.</summary>
    /// <param name="bread">The bread.</param>
    /// <param name="measure">What.</param>
    /// <param name="piece">Of which piece, from 1.</param>
    public static string Field(LessonFormula bread, Measure measure, int piece)
    {
        ArgumentNullException.ThrowIfNull(bread);
        return measure == Measure.GuessedHeight
            ? $"{bread.Formula.Id}.{NameOf(measure)}"
            : string.Create(CultureInfo.InvariantCulture, $"{bread.Formula.Id}.{NameOf(measure)}.{piece}");
    }

    /// <summary>What a measure is called in names of fields and in tables.</summary>
    public static string NameOf(Measure measure) =>
        measure switch
        {
            Measure.MassBefore => "mass-before",
            Measure.MassAfter => "mass-after",
            Measure.BakeLoss => "loss",
            Measure.Height => "height",
            Measure.Diameter => "width",
            Measure.InternalTemperature => "middle",
            Measure.GuessedHeight => "guess",
            Measure.MixedTemperature => "mixed",
        };

    private static IEnumerable<Measure> Authored(LessonFormula bread) =>
        bread.Observations.Select(observed => observed.Measure).Where(measure => measure != Measure.BakeLoss);

    /// <summary>Of what the lesson asks: what is asked of every bread makes no other form of one that is out already.</summary>
    private string IdentityWith(IEnumerable<string> names) =>
        FormIdentity.Of(
            "observations",
            [_id, .. names, Units.ToString(), .. _asked.Select(bread => $"{bread.Formula.Id}: {string.Join(' ', Authored(bread))}")]
        );
}
