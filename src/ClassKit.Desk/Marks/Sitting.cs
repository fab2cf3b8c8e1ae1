using ClassKit.Content.Terms;
using ClassKit.Terms.Bench;

namespace ClassKit.Desk.Marks;

/// <summary>Whose marks of a work at the bench are meant, of which sitting.</summary>
/// <param name="Key">How addresses and names of files call it.</param>
/// <param name="Column">Where the term names the file.</param>
/// <param name="Words">What pages call it.</param>
public sealed record Sitting(string Key, string Column, string Words)
{
    /// <summary>The first marker.</summary>
    public static Sitting First { get; } = new("first", "marks", "First marker");

    /// <summary>1 for the first sitting, 2 for the resit.</summary>
    public int Number => Column == "resit" ? 2 : 1;

    /// <summary>All there are.</summary>
    public static IReadOnlyList<Sitting> All { get; } =
    [First, new("second", "second marker", "Second marker"), new("resit", "resit", "Resit")];

    /// <summary>The file that has it, as the term names it now; null if none.</summary>
    public string? FileOf(PlannedWork work)
    {
        ArgumentNullException.ThrowIfNull(work);
        return Key switch
        {
            "second" => work.BenchSources.Second,
            "resit" => work.BenchSources.Resit,
            _ => work.BenchSources.First,
        };
    }

    /// <summary>What was seen, as the term has it now; null if nothing.</summary>
    public BenchSheet? In(PlannedWork work)
    {
        ArgumentNullException.ThrowIfNull(work);
        return Key switch
        {
            "second" => work.Bench is [var twice, ..] ? twice.Second : null,
            "resit" => work.Bench is [_, var again, ..] ? again.First : null,
            _ => work.Bench is [var once, ..] ? once.First : null,
        };
    }
}
