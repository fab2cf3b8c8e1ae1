using ClassKit.CellFormulas.Sheets;
using ClassKit.Exercises.Dealing;
using ClassKit.Exercises.Layout;
using ClassKit.Grading.Finding;

namespace ClassKit.Grading.Intake;

/// <summary>
/// The numbers that stand in a returned workbook where the class's givens were dealt, held against what was dealt to whom.
/// </summary>
internal sealed class DealtNumbers
{
    /// <summary>So large a share of a student's numbers nobody else has by chance, however few values each can take.</summary>
    private const double Unmistakable = 0.9;

    /// <summary>Two cells may come to a neighbour's numbers by chance, or by trying out what a neighbour has.</summary>
    private const int FewestOfAnother = 3;

    private readonly DealtClass _dealt;
    private readonly Dictionary<(string Exercise, string Given), double?> _values;
    private readonly HashSet<(string Exercise, string Given)> _telling;

    /// <summary>Reads the numbers in their places, which are the same for everyone who has an exercise.</summary>
    public DealtNumbers(DealtClass dealt, PracticeLayout layout, WorkbookSnapshot workbook, CellFinder finder)
    {
        _dealt = dealt;
        _values = layout
            .Exercises.SelectMany(exercise =>
                finder.Find(exercise).Givens.Select(given => (Key: (exercise.Exercise.Id, given.Key), Place: given.Value))
            )
            .ToDictionary(
                given => given.Key,
                given => workbook.Find(given.Place)?.Stored is { IsNumber: true, Number: var number } ? number : (double?)null
            );
        _telling =
        [
            .. dealt.Exercises.SelectMany(exercise =>
                exercise.Givens.Where(given => !given.IsConstant).Select(given => (exercise.Id, given.Id))
            ),
        ];
    }

    /// <summary>The one student for whom clearly more of the dealt numbers stand in their places than for anyone else.</summary>
    public DealtStudent? Likeliest
    {
        get
        {
            var ranked = _dealt
                .Students.Select(student => (Student: student, Hits: Givens(student).Count(IsThere)))
                .OrderByDescending(candidate => candidate.Hits)
                .Take(2)
                .ToList();
            return
                ranked is [var best, ..]
                && best.Hits * 2 > Givens(best.Student).Count()
                && (ranked.Count == 1 || best.Hits > ranked[1].Hits)
                ? best.Student
                : null;
        }
    }

    /// <summary>
    /// True if most of the numbers are others than those dealt to a student, and they are nobody else's here either. Blank cells say
    /// nothing.
    /// </summary>
    /// <param name="student">Whose workbook it seems to be; null if nobody's.</param>
    public bool SpeakAgainst(DealtStudent? student)
    {
        if (student is null)
            return Likeliest is null;
        var telling = Givens(student).Where(given => _telling.Contains((given.Exercise, given.Name))).ToList();
        return telling.Count(IsAnother) * 2 > telling.Count
            && !_dealt.Students.Any(other => other != student && Givens(other).Count(IsThere) >= Unmistakable * Givens(other).Count());
    }

    /// <summary>
    /// The student whose numbers stand where another's were dealt, all or nearly all of them and several that tell the two apart; null if
    /// there is none. Cells that somebody tried other numbers in do not come to that.
    /// </summary>
    /// <param name="owner">Whose workbook it says it is.</param>
    public DealtStudent? InPlaceOf(DealtStudent owner)
    {
        // As nearly everybody's: only where that is not so are the others looked at, which takes as long as the class is large.
        if (Givens(owner).Count(IsAnother) < FewestOfAnother || Likeliest is not { } other || other == owner)
            return null;
        var own = Givens(owner).ToDictionary(given => (given.Exercise, given.Name), given => given.Value);
        var there = Givens(other).Where(IsThere).ToList();
        var tellApart = there.Count(given => own.TryGetValue((given.Exercise, given.Name), out var dealt) && dealt != given.Value);
        return tellApart >= FewestOfAnother && there.Count >= Unmistakable * Givens(other).Count() ? other : null;
    }

    private static IEnumerable<(string Exercise, string Name, decimal Value)> Givens(DealtStudent student) =>
        student.Variants.SelectMany(variant => variant.Givens.Select(given => (variant.Exercise.Id, given.Key, given.Value)));

    private bool IsThere((string Exercise, string Name, decimal Value) given) =>
        _values[(given.Exercise, given.Name)] is { } number && GivenCheck.IsAsDealt(number, given.Value);

    private bool IsAnother((string Exercise, string Name, decimal Value) given) =>
        _values[(given.Exercise, given.Name)] is { } number && !GivenCheck.IsAsDealt(number, given.Value);
}
