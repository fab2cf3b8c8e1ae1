using ClassKit.Lessons.Measured;
using ClassKit.Lessons.Packs;

namespace ClassKit.UseCases.Observing;

/// <summary>What a class measured.</summary>
/// <param name="Pack">The lesson and the class.</param>
/// <param name="Measured">The measurements beside what was predicted.</param>
/// <param name="Unread">What came back and could not be used, in words.</param>
public sealed record ObservedMade(LessonPack Pack, MeasuredClass Measured, IReadOnlyList<string> Unread);
