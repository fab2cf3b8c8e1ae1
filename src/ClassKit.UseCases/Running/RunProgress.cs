namespace ClassKit.UseCases.Running;

/// <summary>How far a run is.</summary>
/// <param name="Step">What it is at.</param>
/// <param name="Done">How many of what the step counts are done.</param>
/// <param name="Total">How many there are; null where that is not known or nothing is counted. It may grow, where an archive holds more
/// than it seemed.</param>
public readonly record struct RunProgress(RunStep Step, int Done, int? Total)
{
    /// <summary>What was done last, such as a file by its path among what came back; null where nothing has a name.</summary>
    public string? What { get; init; }
}
