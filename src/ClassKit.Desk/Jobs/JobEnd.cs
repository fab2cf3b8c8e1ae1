using ClassKit.Content.Diagnostics;
using ClassKit.UseCases.Output;
using ClassKit.UseCases.Output.Writing;

namespace ClassKit.Desk.Jobs;

/// <summary>What came of a job.</summary>
/// <param name="Lines">What the instructor should know.</param>
/// <param name="Problems">Why nothing came of it; empty if something did.</param>
public sealed record JobEnd(IReadOnlyList<string> Lines, IReadOnlyList<Diagnostic> Problems)
{
    /// <summary>All went well, and the next page says the rest.</summary>
    public static JobEnd Well { get; } = new([], []);

    /// <summary>What came of writing a folder.</summary>
    public static JobEnd Of(Written written)
    {
        ArgumentNullException.ThrowIfNull(written);
        return new([.. NoteLineWords.OfAll([.. written.Notes])], [.. written.Problems.Distinct()]);
    }

    /// <summary>What came of work that wrote no folder.</summary>
    public static JobEnd Of(Produced produced)
    {
        ArgumentNullException.ThrowIfNull(produced);
        return new([.. NoteLineWords.OfAll([.. produced.Notes])], [.. produced.Problems.Distinct()]);
    }

    /// <summary>What would come of work that was only asked about: nothing was done, and that stands first.</summary>
    /// <param name="produced">What it would come to.</param>
    /// <param name="nothing">That nothing was done.</param>
    public static JobEnd Would(Produced produced, string nothing) =>
        Of(produced) is { Problems.Count: 0 } end ? end with { Lines = [nothing, .. end.Lines] } : Of(produced);

    /// <summary>Nothing, and why.</summary>
    public static JobEnd Nothing(IReadOnlyList<Diagnostic> problems) => new([], [.. problems.Distinct()]);
}
