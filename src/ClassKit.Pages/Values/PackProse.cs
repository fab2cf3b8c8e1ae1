using ClassKit.Lessons.Packs;

namespace ClassKit.Pages.Values;

/// <summary>Puts a pack into words.</summary>
public static class PackProse
{
    /// <summary>The pack with the values that its texts name as they are written in the class's units.</summary>
    public static LessonPack InWords(PlannedPack pack)
    {
        ArgumentNullException.ThrowIfNull(pack);
        return new(pack, ValueText.Of(pack));
    }
}
