namespace ClassKit.Exercises.Pictures;

/// <summary>A picture of an authored text, small enough to stand on a page as it is.</summary>
/// <param name="Name">How the text names it: a path from the text's own file.</param>
/// <param name="Shows">What is to be seen, for whoever cannot see it; empty where the text says it each time.</param>
/// <param name="Address">The picture itself, as an address that asks nobody: <c>data:image/png;base64,…</c> (RFC 2397).</param>
public sealed record Picture(string Name, string Shows, string Address)
{
    /// <summary>What kind of picture it is: <c>image/png</c> or <c>image/jpeg</c>.</summary>
    public string MediaType => Address["data:".Length..Address.IndexOf(';', StringComparison.Ordinal)];

    /// <summary>The picture's file.</summary>
    public byte[] ToBytes() => Convert.FromBase64String(Address[(Address.IndexOf(',', StringComparison.Ordinal) + 1)..]);
}
