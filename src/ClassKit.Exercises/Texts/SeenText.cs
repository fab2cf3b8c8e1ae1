using ClassKit.Exercises.Authoring;

namespace ClassKit.Exercises.Texts;

/// <summary>What a drawing shows, in words.</summary>
public static class SeenText
{
    /// <summary>The words for a student whose key gives a value; null for a part without a drawing.</summary>
    public static string? Of(Part part, double value)
    {
        ArgumentNullException.ThrowIfNull(part);
        return part.Choice is { Drawing: { } drawing, From: var from } ? drawing.Seen(from, value)?.Words : null;
    }
}
