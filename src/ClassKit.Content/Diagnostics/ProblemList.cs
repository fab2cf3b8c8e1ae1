using ClassKit.Baking.Ingredients;
using ClassKit.Content.Wording;

namespace ClassKit.Content.Diagnostics;

/// <summary>Gathers what is wrong with one file, so that all of it can be shown at once.</summary>
/// <remarks>
/// A reader that meets a problem notes it here and goes on with a harmless stand-in; the model is handed out only when there was none.
/// </remarks>
internal sealed class ProblemList(string file)
{
    /// <summary>What is quoted from a file may be of any length.</summary>
    private const int MaxFound = 300;

    private readonly List<Diagnostic> _problems = [];
    private readonly List<Diagnostic> _doubts = [];

    public string File => file;

    /// <summary>What is wrong with another file, on which this one rests.</summary>
    public Diagnostic? Beneath
    {
        init
        {
            if (value is not null)
                _problems.Add(value);
            IsBeneathBroken = value is not null;
        }
    }

    /// <summary>True if names may be unknown only because the file that has them cannot be read.</summary>
    public bool IsBeneathBroken { get; private init; }

    /// <summary>The ingredients that the file can name: those that ship, and those of its place.</summary>
    public Pantry Pantry
    {
        get => field ?? Pantry.Shipped;
        init;
    }

    public bool IsEmpty => _problems.Count == 0;

    public int Count => _problems.Count;

    public void Add(int? line, string found, string expected, Remedy? remedy = null) =>
        _problems.Add(new(file, line, Prose.Excerpt(Prose.OneLine(found), MaxFound), expected) { Remedy = remedy });

    /// <summary>Notes what stands in nobody's way.</summary>
    public void Doubt(int? line, string found, string expected, Weight weight = Weight.Doubtful) =>
        _doubts.Add(new(file, line, Prose.Excerpt(Prose.OneLine(found), MaxFound), expected) { Weight = weight });

    /// <summary>The model if nothing was wrong, else everything that was, in file order.</summary>
    public Reading<T> Finish<T>(Func<T> build)
        where T : class => IsEmpty ? new(build(), []) { Doubts = Ordered(_doubts) } : Fail<T>();

    public Reading<T> Fail<T>()
        where T : class => new(null, Ordered(_problems)) { Doubts = Ordered(_doubts) };

    private static IReadOnlyList<Diagnostic> Ordered(List<Diagnostic> told) => [.. told.OrderBy(problem => problem.Line ?? 0)];
}
