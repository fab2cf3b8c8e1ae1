using ClassKit.Exercises.Pictures;

namespace ClassKit.UseCases.Dealing;

/// <summary>The picture of an exercise in dealt.json, so that feedback shows what the student saw wherever the lesson is by then.</summary>
internal static class DealtPicture
{
    /// <summary>In letters of Base64, which are whole by fours.</summary>
    private const int Piece = 76_000;

    /// <summary>In bytes, as much as a lesson's picture may have.</summary>
    private const int Most = 2 * 1024 * 1024;

    public static DealtDocument.PictureEntry? Entry(Picture? picture) =>
        picture is null
            ? null
            : new(
                picture.Shows,
                picture.MediaType,
                [.. Convert.ToBase64String(picture.ToBytes()).Chunk(Piece).Select(letters => new string(letters))]
            );

    /// <exception cref="FormatException">It is no picture that a page may hold.</exception>
    public static Picture? Model(DealtDocument.PictureEntry? entry)
    {
        if (entry is null)
            return null;
        if (entry.MediaType is not ("image/png" or "image/jpeg"))
            throw new FormatException($"“{entry.MediaType}” is no picture that a page may hold; expected image/png or image/jpeg");
        var bytes = Convert.FromBase64String(string.Concat(entry.Base64));
        return bytes.Length <= Most
            ? new("", entry.Shows, $"data:{entry.MediaType};base64,{Convert.ToBase64String(bytes)}")
            : throw new FormatException($"A picture has {bytes.Length} bytes; expected at most {Most}");
    }
}
