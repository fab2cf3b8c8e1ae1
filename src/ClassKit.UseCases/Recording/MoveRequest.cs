namespace ClassKit.UseCases.Recording;

/// <summary>A record to be kept elsewhere.</summary>
/// <param name="From">A file or the teaching folder that it lies in.</param>
/// <param name="To">The folder to keep it in.</param>
/// <param name="Now">When.</param>
public sealed record MoveRequest(string From, string To, DateTimeOffset Now);
