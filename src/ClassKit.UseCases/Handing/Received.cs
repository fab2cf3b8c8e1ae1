using ClassKit.UseCases.Checking;
using ClassKit.UseCases.Output;

namespace ClassKit.UseCases.Handing;

/// <summary>What came out of a bundle.</summary>
/// <param name="Files">The files, by their places.</param>
/// <param name="NotBrought">Entries that were left in the bundle: such as no lesson leads to, and such as would go elsewhere.</param>
/// <param name="Check">What a check says of them.</param>
public sealed record Received(IReadOnlyList<OutputFile> Files, IReadOnlyList<string> NotBrought, ContentProof Check);
