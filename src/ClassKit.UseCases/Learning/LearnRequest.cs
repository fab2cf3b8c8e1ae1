using ClassKit.Content.Sources;

namespace ClassKit.UseCases.Learning;

/// <summary>What learning takes.</summary>
/// <param name="Proposals">The file of proposed misconceptions, as the instructor left it.</param>
/// <param name="Exercises">The files of the exercises that they are for.</param>
public sealed record LearnRequest(Source Proposals, IReadOnlyList<Source> Exercises);
