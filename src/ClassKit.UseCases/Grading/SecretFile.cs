using ClassKit.Content.Diagnostics;
using ClassKit.Grading.Pseudonyms;
using ClassKit.UseCases.Output;

namespace ClassKit.UseCases.Grading;

/// <summary>
/// Where the secret of pseudonyms is kept: in the folder of their key, which is the instructor's alone. Grading again into that folder
/// takes it, so that a class keeps its pseudonyms.
/// </summary>
public static class SecretFile
{
    private const string Name = "pseudonym-secret.txt";

    /// <summary>The secret that lies in a key's folder, a new one where none does, or why what lies there is none.</summary>
    /// <param name="folder">The folder of the key, which may be new.</param>
    /// <param name="drawn">Bytes drawn at random, <see cref="PseudonymSecret.Bytes"/> of them.</param>
    public static Reading<PseudonymSecret> At(string folder, ReadOnlySpan<byte> drawn)
    {
        var path = Path.Combine(folder, Name);
        if (!File.Exists(path))
            return new(new(drawn), []);
        try
        {
            return PseudonymSecret.Parse(File.ReadAllText(path)) is { } kept
                ? new(kept, [])
                : Broken(path, "It is no secret of pseudonyms");
        }
        catch (Exception failure) when (failure is IOException or UnauthorizedAccessException)
        {
            return Broken(path, $"It could not be read: {failure.Message}");
        }
    }

    /// <summary>The file, to lie beside the table of who is who.</summary>
    public static OutputFile Of(PseudonymSecret secret)
    {
        ArgumentNullException.ThrowIfNull(secret);
        return OutputFile.OfText(Name, () => secret.Text + "\n");
    }

    private static Reading<PseudonymSecret> Broken(string path, string found) =>
        new(
            null,
            [
                new(
                    path,
                    null,
                    found,
                    $"It holds {2 * PseudonymSecret.Bytes} digits and letters a to f. Put it back as it was; or take it away, and everybody gets another pseudonym."
                ),
            ]
        );
}
