using ClassKit.Content;

namespace ClassKit.UseCases;

/// <summary>What checking takes.</summary>
/// <param name="Library">Reads each file once.</param>
/// <param name="Paths">What is checked.</param>
public sealed record CheckRequest(Library Library, IEnumerable<string> Paths);
