namespace ClassKit.UseCases.Beginning;

/// <summary>What beginning takes.</summary>
/// <param name="Part">What is begun.</param>
public sealed record BeginRequest(BeginPart Part);
