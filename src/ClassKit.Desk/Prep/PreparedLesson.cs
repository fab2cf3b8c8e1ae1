using ClassKit.Lessons.Packs;

namespace ClassKit.Desk.Prep;

/// <summary>A lesson prepared for a class.</summary>
/// <param name="Pack">What was computed and planned.</param>
/// <param name="Files">Its pages and workbooks.</param>
public sealed record PreparedLesson(LessonPack Pack, IReadOnlyList<PreparedFile> Files)
{
    /// <summary>The files of a pack.</summary>
    public static PreparedLesson Of(LessonPack pack) => new(pack, PreparedFile.Of(pack));
}
