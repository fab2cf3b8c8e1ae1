using ClassKit.Lessons.Authored;

namespace ClassKit.Lessons.Stations;

/// <summary>Something to set out at every team's bench.</summary>
/// <param name="Name">What.</param>
/// <param name="Count">How many at one bench.</param>
/// <param name="For">The breads that need it, in the lesson's order.</param>
/// <param name="IsShared">True if one serves all of them.</param>
public sealed record StationTool(string Name, int Count, IReadOnlyList<LessonFormula> For, bool IsShared);
