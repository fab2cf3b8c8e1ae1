using ClassKit.CellFormulas.Sheets;
using ClassKit.Exercises.Dealing;
using ClassKit.Grading.Finding;

namespace ClassKit.Grading.Intake;

/// <summary>The numbers that stand in a returned workbook where the class's givens were dealt, held against what was dealt to whom.</summary>
internal sealed class DealtNumbers
{
    /// <summary>So large a share of a student's numbers nobody else has by chance, however few values each can take.</summary>
    private const double Unmistakable = 0.9;

    private readonly DealtClass _dealt;
    private readonly Dictionary<(string Exercise, string Given), double?> _values;
    private readonly HashSet<(string Exercise, string Given)> _telling;

    /// <summary>Reads the numbers in their places, which are the same for everyone who has an exercise.</summary>
    public DealtNumbers(DealtClass dealt, WorkbookSnapshot workbook)
    {
        _dealt = dealt;
        var finder = new CellFinder(workbook, dealt.Plan);
        _values = dealt.Exercises
            .Select(exercise => (exercise.Id, Student: dealt.Students.FirstOrDefault(student => student.Givens.Any(given => given.Exercise == exercise.Id))))
            .Where(exercise => exercise.Student is not null)
            .SelectMany(exercise => finder.Find(exercise.Student!, exercise.Id).Givens.Select(given => (Key: (exercise.Id, given.Key), Place: given.Value)))
            .ToDictionary(given => given.Key, given => workbook.Find(given.Place)?.Stored is { IsNumber: true, Number: var number } ? number : (double?)null);
        _telling = [.. dealt.Exercises.SelectMany(exercise => exercise.Givens.Where(given => !given.IsConstant).Select(given => (exercise.Id, given.Id)))];
    }

    /// <summary>The one student for whom clearly more of the dealt numbers stand in their places than for anyone else.</summary>
    public DealtStudent? Likeliest
    {
        get
        {
            var ranked = _dealt.Students.Select(student => (Student: student, Hits: student.Givens.Count(IsThere))).OrderByDescending(candidate => candidate.Hits).Take(2).ToList();
            return ranked is [var best, ..] && best.Hits * 2 > best.Student.Givens.Count && (ranked.Count == 1 || best.Hits > ranked[1].Hits) ? best.Student : null;
        }
    }

    /// <summary>True if most of the numbers are others than those dealt to a student, and they are nobody else's here either. Blank cells say nothing.</summary>
    /// <param name="student">Whose workbook it seems to be; null if nobody's.</param>
    public bool SpeakAgainst(DealtStudent? student)
    {
        if (student is null) return Likeliest is null;
        var telling = student.Givens.Where(given => _telling.Contains((given.Exercise, given.Name))).ToList();
        return telling.Count(IsAnother) * 2 > telling.Count && !_dealt.Students.Any(other => other != student && other.Givens.Count(IsThere) >= Unmistakable * other.Givens.Count);
    }

    private bool IsThere(DealtGiven given) => _values[(given.Exercise, given.Name)] is { } number && GivenCheck.IsAsDealt(number, given.Value);

    private bool IsAnother(DealtGiven given) => _values[(given.Exercise, given.Name)] is { } number && !GivenCheck.IsAsDealt(number, given.Value);
}
