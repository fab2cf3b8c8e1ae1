namespace ClassKit.UseCases.Intake;

/// <summary>A file that somebody hands over.</summary>
/// <param name="Path">What it is called, with forward slashes where it comes out of folders; it decides nothing but whose it is if the file
/// does not say.</param>
/// <param name="Open">Opens it from its beginning; closed by who opens it. Where it cannot be sought in, an archive of more than 50 MB is
/// refused.</param>
public sealed record Upload(string Path, Func<Stream> Open)
{
    /// <summary>When it was changed last, by where it comes from; null if that is not known.</summary>
    public DateTime? Dated { get; init; }
}
