using ClassKit.Content.Diagnostics;
using ClassKit.Notes;

namespace ClassKit.UseCases.Output;

/// <summary>The files of a use case's result, or why there are none.</summary>
/// <param name="Files">What goes into the output folder; empty when there are problems.</param>
/// <param name="Notes">What the instructor should know of work that succeeded.</param>
/// <param name="Problems">What is wrong with the content or input.</param>
public sealed record Produced(IReadOnlyList<OutputFile> Files, IReadOnlyList<Note> Notes, IReadOnlyList<Diagnostic> Problems)
{
    /// <summary>What is added to files of the instructor's when the files are written.</summary>
    public IReadOnlyList<Addition> Additions { get; init; } = [];

    /// <summary>
    /// Asked of the output folder as it lies there before anything is written: why these files must not replace what it holds, or null.
    /// </summary>
    public Func<string, Diagnostic?>? Objection { get; init; }

    /// <summary>
    /// True for files that are made of something that only one can read at a time, as a database is; others are made several at once.
    /// </summary>
    public bool IsMadeInTurn { get; init; }

    /// <summary>The files to open first, within the folder.</summary>
    public IReadOnlyList<string> Open { get; init; } = [];

    /// <summary>What the instructor may want to do next.</summary>
    public IReadOnlyList<Remedy> Remedies { get; init; } = [];

    /// <summary>True if there is something to write.</summary>
    public bool Succeeded => Problems.Count == 0;

    /// <summary>The same with more to know, last.</summary>
    public Produced With(IEnumerable<Note> notes) => this with { Notes = [.. Notes, .. notes] };

    /// <summary>What is made of a model that was read or worked out, or why there is none.</summary>
    public static Produced Of<T>(Reading<T> reading, Func<T, Produced> make)
        where T : class
    {
        ArgumentNullException.ThrowIfNull(reading);
        ArgumentNullException.ThrowIfNull(make);
        return reading.Succeeded ? make(reading.Model) : Nothing(reading.Problems);
    }

    /// <summary>The files of what a request comes to, or why there are none.</summary>
    public static Produced Of<TRequest, TResult>(
        Reading<TRequest> request,
        Func<TRequest, Reading<TResult>> work,
        Func<TResult, Produced> make
    )
        where TRequest : class
        where TResult : class => Of(request, asked => Of(work(asked), make));

    /// <summary>What is made with something that is closed afterwards, or why it could not be opened.</summary>
    public static Produced Within<T>(Reading<T> opened, Func<T, Produced> make)
        where T : class, IDisposable
    {
        ArgumentNullException.ThrowIfNull(opened);
        ArgumentNullException.ThrowIfNull(make);
        using var open = opened.Model;
        return open is null ? Nothing(opened.Problems) : make(open);
    }

    /// <summary>Nothing, and why.</summary>
    public static Produced Nothing(params IReadOnlyList<Diagnostic> problems) => new([], [], problems);
}
