namespace ClassKit.Lessons;

/// <summary>Something that a team needs at its bench for one bread.</summary>
/// <param name="Name">In the singular: <c>Muffin tin with standard cups</c>.</param>
/// <param name="Count">How many; 1 or more.</param>
/// <param name="IsShared">True if one serves all breads of a team, as a scale does; otherwise each bread that is under way needs its own.</param>
public sealed record BenchTool(string Name, int Count, bool IsShared);
