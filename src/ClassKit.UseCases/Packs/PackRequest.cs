using ClassKit.Lessons.Authored;
using ClassKit.Lessons.Classes;

namespace ClassKit.UseCases.Packs;

/// <summary>What a lesson pack takes.</summary>
/// <param name="Lesson">The lesson.</param>
/// <param name="Profile">The class.</param>
/// <param name="Source">How messages name what does not go together.</param>
public sealed record PackRequest(Lesson Lesson, ClassProfile Profile, string Source);
