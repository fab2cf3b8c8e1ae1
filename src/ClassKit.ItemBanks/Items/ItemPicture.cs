using ClassKit.Exercises.Authoring;

namespace ClassKit.ItemBanks.Items;

/// <summary>Where the picture of an exercise lies in a package, once for all its variants.</summary>
internal static class ItemPicture
{
    /// <summary>The path within the package; null where the exercise has no picture.</summary>
    public static string? PathOf(Exercise exercise) =>
        exercise.Picture is { } picture ? $"images/{exercise.Id}.{(picture.MediaType == "image/png" ? "png" : "jpg")}" : null;

    /// <summary>The same from an item, which lies in a folder of its own.</summary>
    public static string? FromItem(Exercise exercise) => PathOf(exercise) is { } path ? $"../{path}" : null;
}
