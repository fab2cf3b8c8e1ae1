namespace ClassKit.Content.Forms;

/// <summary>What came back of a form that was filled in: in a browser without a network, or in a workbook.</summary>
/// <param name="Identity">Which form; empty where the file does not say.</param>
/// <param name="Fields">What was filled in, by the names that the form gives.</param>
public sealed record FormFile(string Identity, IReadOnlyDictionary<string, string> Fields)
{
    /// <summary>What it calls itself for people; null where it does not say.</summary>
    public string? Called { get; init; }
}
