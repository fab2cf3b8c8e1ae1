using ClassKit.Content.Sources;

namespace ClassKit.UseCases.Checking;

/// <summary>What checking takes.</summary>
/// <param name="Library">Reads each file once.</param>
/// <param name="Paths">What is checked.</param>
public sealed record CheckRequest(Library Library, IEnumerable<string> Paths)
{
    /// <summary>False to leave out what takes the time: drawing every exercise on trial.</summary>
    public bool ProvesExercises { get; init; } = true;
}
