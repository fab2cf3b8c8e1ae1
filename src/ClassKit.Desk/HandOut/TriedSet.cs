using ClassKit.Desk.Folders;
using ClassKit.UseCases.Dealing;

namespace ClassKit.Desk.HandOut;

/// <summary>A set that was drawn to be looked at, and is in nobody's hands yet.</summary>
/// <param name="Lesson">What it was drawn from.</param>
/// <param name="Paths">What was asked.</param>
/// <param name="Made">What everybody would get.</param>
/// <param name="Notes">What the instructor should know of it.</param>
/// <param name="Asked">What was ticked and typed, by the names of fields.</param>
public sealed record TriedSet(
    LessonEntry Lesson,
    DealPaths Paths,
    DealMade Made,
    IReadOnlyList<string> Notes,
    IReadOnlyDictionary<string, IReadOnlyList<string>> Asked
);
