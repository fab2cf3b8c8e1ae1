using ClassKit.Content.Diagnostics;

namespace ClassKit.UseCases.Tests.Checking.FirstDay;

/// <summary>What an instructor does wrong on the first day, and what is to be said of it.</summary>
/// <param name="Name">What was done.</param>
/// <param name="Make">Does it.</param>
/// <param name="File">Where it is said to be.</param>
/// <param name="Line">Its line; null for the file as a whole.</param>
/// <param name="Finding">Words of what is found.</param>
/// <param name="Remedy">Words of what to do.</param>
internal sealed record Mistake(string Name, Action<TeachingFolder> Make, string File, int? Line, string Finding, string Remedy)
{
    /// <summary>How it stands in the way.</summary>
    public Weight As { get; init; } = Weight.Blocks;

    public override string ToString() => Name;
}
