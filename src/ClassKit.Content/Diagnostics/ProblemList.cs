using ClassKit.Baking.Ingredients;
using ClassKit.Content.Wording;

namespace ClassKit.Content.Diagnostics;

/// <summary>Gathers what is wrong with one file, so that all of it can be shown at once.</summary>
/// <remarks>A reader that meets a problem notes it here and goes on with a harmless stand-in; the model is handed out only when there was none.</remarks>
internal sealed class ProblemList(string file)
{
    /// <summary>What is quoted from a file may be of any length.</summary>
    private const int MaxFound = 300;

    private readonly List<Diagnostic> _problems = [];

    public string File => file;

    /// <summary>The ingredients that the file can name: those that ship, and those of its place.</summary>
    public Pantry Pantry { get => field ?? Pantry.Shipped; init; }

    public bool IsEmpty => _problems.Count == 0;

    public int Count => _problems.Count;

    public void Add(int? line, string found, string expected, Remedy? remedy = null) =>
        _problems.Add(new(file, line, Prose.Excerpt(Prose.OneLine(found), MaxFound), expected) { Remedy = remedy });

    /// <summary>The model if nothing was wrong, else everything that was, in file order.</summary>
    public Reading<T> Finish<T>(Func<T> build)
        where T : class => IsEmpty ? new(build(), []) : Fail<T>();

    public Reading<T> Fail<T>()
        where T : class => new(null, [.. _problems.OrderBy(problem => problem.Line ?? 0)]);
}
